package org.stillrail.sweepfile.accuracy;

import java.util.List;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.sweepfile.Fixture;

/**
 * How far each point of a measured impedance may be from the truth. The error is a disc around Z in the complex plane, so that
 * it falls on the resistance in full: an ESR of 2 mohm under a reactance of 1 ohm is lost in one per cent of Z.
 */
public final class ImpedanceUncertainty {

    private final Curve impedance;
    private final double[] errorOhm;

    private ImpedanceUncertainty(Curve impedance, double[] errorOhm) {
        this.impedance = impedance;
        this.errorOhm = errorOhm;
    }

    /**
     * @param referenceOhm of the S parameters; without meaning for the fixture 'impedance'
     * @param accuracy     of the instrument, after calibration
     */
    public static ImpedanceUncertainty of(Curve impedance, Fixture fixture, double referenceOhm, InstrumentAccuracy accuracy) {
        double[] error = new double[impedance.size()];
        for (int i = 0; i < error.length; i++) {
            Complex z = new Complex(impedance.real(i), impedance.imaginary(i));
            error[i] = z.magnitude() == 0 ? Double.POSITIVE_INFINITY : ErrorGrowth.errorOhm(fixture, z, referenceOhm, accuracy);
        }
        return new ImpedanceUncertainty(impedance, error);
    }

    /** Radius of the disc in ohm; infinite where Z is 0. */
    public double errorOhm(int index) {
        return errorOhm[index];
    }

    /** Error of |Z| over |Z|. */
    public double relativeMagnitude(int index) {
        return errorOhm[index] / impedance.magnitude(index);
    }

    /** Error of the resistance over the resistance; infinite where that is 0. */
    public double relativeResistance(int index) {
        return errorOhm[index] / Math.abs(impedance.real(index));
    }

    /** False where the error is as large as the resistance itself, so that not even its sign is known. */
    public boolean isResistanceKnown(int index) {
        return relativeResistance(index) < 1;
    }

    /** Where |Z| is known to within the limit (0.1 is ten per cent). */
    public List<FrequencyBand> trustedBands(double limit) {
        return FrequencyBand.where(impedance.grid(), i -> relativeMagnitude(i) <= limit);
    }

    /** Where the resistance is not known. */
    public List<FrequencyBand> unknownResistanceBands() {
        return FrequencyBand.where(impedance.grid(), i -> !isResistanceKnown(i));
    }

    /** |Z| less its error at each frequency, not below 0; for a band on a chart. */
    public double[] lowestMagnitudeOhm() {
        return magnitudes(-1);
    }

    public double[] highestMagnitudeOhm() {
        return magnitudes(1);
    }

    private double[] magnitudes(int sign) {
        double[] ohm = impedance.magnitudes();
        for (int i = 0; i < ohm.length; i++) {
            ohm[i] = Math.max(0, ohm[i] + sign * errorOhm[i]);
        }
        return ohm;
    }

    /** Re Z less its error at each frequency; may be negative. */
    public double[] lowestResistanceOhm() {
        return resistances(-1);
    }

    public double[] highestResistanceOhm() {
        return resistances(1);
    }

    private double[] resistances(int sign) {
        double[] ohm = impedance.reals();
        for (int i = 0; i < ohm.length; i++) {
            ohm[i] += sign * errorOhm[i];
        }
        return ohm;
    }
}
