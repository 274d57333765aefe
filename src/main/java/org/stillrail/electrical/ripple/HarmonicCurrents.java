package org.stillrail.electrical.ripple;

import java.util.function.DoubleUnaryOperator;

/** How the rms current of one part is spread over the harmonics of the switching frequency. Immutable. */
public final class HarmonicCurrents {

    private final double fundamentalHz;
    private final double[] squareA2;
    private final double tailHz;
    private final double tailA2;

    /**
     * @param squareA2 squared rms current of each harmonic, from order 1; not copied
     * @param tailHz   a frequency that stands for all harmonics above those
     * @param tailA2   their squared rms current together
     */
    HarmonicCurrents(double fundamentalHz, double[] squareA2, double tailHz, double tailA2) {
        this.fundamentalHz = fundamentalHz;
        this.squareA2 = squareA2;
        this.tailHz = tailHz;
        this.tailA2 = tailA2;
    }

    /** Sum over the harmonics of squared rms current times a weight, which is a function of frequency in Hz. */
    double weighted(DoubleUnaryOperator weight) {
        double sum = tailA2 == 0 ? 0 : tailA2 * weight.applyAsDouble(tailHz);
        for (int i = squareA2.length - 1; i >= 0; i--) {
            if (squareA2[i] > 0) {
                sum += squareA2[i] * weight.applyAsDouble(fundamentalHz * (i + 1));
            }
        }
        return sum;
    }

    /** Frequency in Hz that stands for all harmonics above those that are known one by one. */
    public double tailHz() {
        return tailHz;
    }

    /** Their squared rms current together. */
    double tailA2() {
        return tailA2;
    }

    /** How many harmonics are known one by one. */
    public int orders() {
        return squareA2.length;
    }

    double squareA2(int order) {
        return squareA2[order - 1];
    }

    public double rmsA() {
        return Math.sqrt(weighted(hz -> 1));
    }

    /** rms current in A of one harmonic, order 1 upwards; 0 above those that are known one by one. */
    public double rmsA(int order) {
        return order <= squareA2.length ? Math.sqrt(squareA2[order - 1]) : 0;
    }

    /**
     * The current at the rating's own frequency that heats as much: {@code Ieq^2 = sum of (In / kf(fn))^2}.
     *
     * @param multiplier kf, the rating at a frequency in Hz over the rating at the reference frequency; positive
     */
    public double equivalentA(DoubleUnaryOperator multiplier) {
        return Math.sqrt(weighted(hz -> {
            double kf = multiplier.applyAsDouble(hz);
            return 1 / (kf * kf);
        }));
    }
}
