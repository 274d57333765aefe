package org.stillrail.electrical.stress;

import java.util.function.DoubleUnaryOperator;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ModelBasis;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;
import org.stillrail.electrical.capacitor.Require;

/**
 * What equal parts hold at a voltage, from their small-signal capacitance C(v) over bias: charge {@code integral of C dv}, energy
 * {@code integral of v C dv}. Only for a constant C are they C V and C V^2 / 2.
 *
 * <p>Integrals go from knot to knot of the curve by Gauss's rule of five points, which is exact for straight lines over v.
 *
 * @param count       equal parts, 1 or more
 * @param unbiasedF   capacitance of one part without bias
 * @param overBias    any reference; null where it is not known, which leaves the capacitance as it is
 * @param elastance   whether the curve is that of 1 / C, whose lines are straight between two sweeps, instead of C
 */
public record BiasCharge(int count, double unbiasedF, CharacteristicCurve overBias, boolean elastance) {

    private static final int SLICES = 8;
    private static final double[] NODES = {0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640};
    private static final double[] WEIGHTS = {
        0.5688888888888889, 0.4786286704993665, 0.4786286704993665, 0.2369268850561891, 0.2369268850561891};

    public BiasCharge {
        Require.positive("unbiasedF", unbiasedF);
        if (count < 1) {
            throw new IllegalArgumentException("count must be 1 or more, not " + count);
        }
    }

    /** With a curve of C. */
    public BiasCharge(int count, double unbiasedF, CharacteristicCurve overBias) {
        this(count, unbiasedF, overBias, false);
    }

    /**
     * Parts with characteristics, at a temperature, an age and a place in their band.
     *
     * @param point its bias does not matter
     */
    public static BiasCharge of(
            int count, Characteristics characteristics, ImpedanceModel model, ModelBasis basis, OperatingPoint point, PlaceInBand place) {
        OperatingPoint unbiased = new OperatingPoint(0, point.temperatureC(), point.ageHours());
        return new BiasCharge(count, characteristics.bend(model, basis, unbiased, place).capacitanceF(), characteristics.overBias());
    }

    /** Small-signal capacitance of all parts together at a voltage. */
    public double capacitanceF(double v) {
        double all = count * unbiasedF;
        if (overBias == null) {
            return all;
        }
        double share = overBias.at(Math.abs(v)) / overBias.at(0);
        return elastance ? all / share : all * share;
    }

    public double chargeC(double v) {
        return integral(0, v, false, this::capacitanceF);
    }

    public double energyJ(double v) {
        return integral(0, v, false, u -> u * capacitanceF(u));
    }

    /** {@code integral of C / v dv} between two positive voltages, in F: times a resistance, the time to bleed. */
    public double bleedF(double fromV, double toV) {
        return integral(Math.log(toV), Math.log(fromV), true, u -> capacitanceF(Math.exp(u)));
    }

    private double integral(double from, double to, boolean logarithmic, DoubleUnaryOperator f) {
        double[] ends = ends(from, to, logarithmic);
        double sum = 0;
        for (int i = 1; i < ends.length; i++) {
            double width = (ends[i] - ends[i - 1]) / SLICES;
            for (int slice = 0; slice < SLICES; slice++) {
                double middle = ends[i - 1] + width * (slice + 0.5);
                for (int k = 0; k < NODES.length; k++) {
                    sum += width / 2 * WEIGHTS[k] * f.applyAsDouble(middle + width / 2 * NODES[k]);
                }
            }
        }
        return sum;
    }

    /** Both ends and the curve's knots between them; over the logarithm where asked. */
    private double[] ends(double from, double to, boolean logarithmic) {
        if (overBias == null) {
            return new double[] {from, to};
        }
        double[] inside = overBias.points().stream().mapToDouble(CharacteristicCurve.Point::x)
                .filter(x -> x > 0)
                .map(x -> logarithmic ? Math.log(x) : x)
                .filter(x -> x > from && x < to)
                .toArray();
        double[] ends = new double[inside.length + 2];
        ends[0] = from;
        System.arraycopy(inside, 0, ends, 1, inside.length);
        ends[ends.length - 1] = to;
        return ends;
    }
}
