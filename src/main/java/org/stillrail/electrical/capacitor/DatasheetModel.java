package org.stillrail.electrical.capacitor;

import java.util.List;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * A causal and passive model that meets the loss figures of a datasheet: {@code Z = R0 + s L + 1 / (Q s^a)}, a resistance,
 * an inductance and a constant-phase element in series, with {@code 0 < a <= 1}.
 *
 * <p>The real part of the constant-phase element is {@code P (w / w1)^-a cos(pi a / 2)}, its reactance
 * {@code -P (w / w1)^-a sin(pi a / 2)}; P is fixed by the series capacitance at w1.
 *
 * @param resistanceOhm           R0
 * @param inductanceH             L
 * @param constantPhase           Q in the formula, in F s^(a-1)
 * @param constantPhaseExponent   a
 * @param warnings                what of the datasheet could not be met
 */
public record DatasheetModel(
        double resistanceOhm, double inductanceH, double constantPhase, double constantPhaseExponent, List<String> warnings)
        implements ImpedanceModel {

    public DatasheetModel {
        Require.notNegative("resistanceOhm", resistanceOhm);
        Require.notNegative("inductanceH", inductanceH);
        Require.positive("constantPhase", constantPhase);
        if (!(constantPhaseExponent > 0) || constantPhaseExponent > 1) {
            throw new IllegalArgumentException("constantPhaseExponent must be above 0 and at most 1, not " + constantPhaseExponent);
        }
        warnings = List.copyOf(warnings);
    }

    /** Solves R0, Q and a from the figures of a datasheet; see {@link LossFigures} for what happens when they conflict. */
    public static DatasheetModel of(LossFigures figures, double inductanceH) {
        return figures.solve(inductanceH);
    }

    @Override
    public void addImpedanceTo(FrequencyGrid grid, double[] resistance, double[] reactance) {
        double a = constantPhaseExponent;
        double real = realPart();
        double imaginary = imaginaryPart();
        double logTwoPi = Math.log(2 * Math.PI);
        for (int i = 0; i < resistance.length; i++) {
            double size = a == 1 ? 1 / grid.omega(i) : Math.exp(-a * (grid.logHz(i) + logTwoPi));
            resistance[i] += resistanceOhm + size * real;
            reactance[i] += grid.omega(i) * inductanceH - size * imaginary;
        }
    }

    @Override
    public ImpedancePoint at(double hz) {
        double a = constantPhaseExponent;
        double omega = 2 * Math.PI * hz;
        double size = a == 1 ? 1 / omega : Math.pow(omega, -a);
        double real = size * realPart();
        double imaginary = size * imaginaryPart();
        return new ImpedancePoint(
                resistanceOhm + real,
                omega * inductanceH - imaginary,
                -a * real / hz,
                2 * Math.PI * inductanceH + a * imaginary / hz);
    }

    private double realPart() {
        double a = constantPhaseExponent;
        return a == 1 ? 0 : Math.cos(Math.PI / 2 * a) / constantPhase;
    }

    private double imaginaryPart() {
        return Math.sin(Math.PI / 2 * constantPhaseExponent) / constantPhase;
    }

    @Override
    public double inductanceAtInfinityH() {
        return inductanceH;
    }
}
