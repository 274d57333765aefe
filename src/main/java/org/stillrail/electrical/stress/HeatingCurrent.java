package org.stillrail.electrical.stress;

import java.util.Arrays;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.ripple.HarmonicCurrents;

/**
 * The current of one part, harmonic by harmonic, as far as its heat needs it: the first {@value #MOST} harmonics that carry
 * current, and all others together at the frequency of the next one. The rms value is kept exactly.
 */
public final class HeatingCurrent {

    private static final int MOST = 60;

    private final FrequencyGrid frequencies;
    private final double[] squareA2;

    private HeatingCurrent(double[] hz, double[] squareA2) {
        this.frequencies = hz.length == 0 ? null : FrequencyGrid.of(hz);
        this.squareA2 = squareA2;
    }

    /** @param fundamentalHz frequency of order 1 */
    public static HeatingCurrent of(HarmonicCurrents currents, double fundamentalHz) {
        Require.positive("fundamentalHz", fundamentalHz);
        double[] hz = new double[MOST + 1];
        double[] squareA2 = new double[MOST + 1];
        double rest = currents.rmsA() * currents.rmsA();
        int n = 0;
        int order = 1;
        for (; order <= currents.orders() && n < MOST; order++) {
            double rms = currents.rmsA(order);
            if (rms > 0) {
                hz[n] = fundamentalHz * order;
                squareA2[n++] = rms * rms;
                rest -= rms * rms;
            }
        }
        if (rest > 0) {
            hz[n] = order <= currents.orders() ? fundamentalHz * order : currents.tailHz();
            squareA2[n++] = rest;
        }
        return new HeatingCurrent(Arrays.copyOf(hz, n), Arrays.copyOf(squareA2, n));
    }

    /** A sine of one frequency. */
    public static HeatingCurrent sine(double hz, double rmsA) {
        Require.positive("hz", hz);
        Require.notNegative("rmsA", rmsA);
        return new HeatingCurrent(new double[] {hz}, new double[] {rmsA * rmsA});
    }

    public double rmsA() {
        return Math.sqrt(Arrays.stream(squareA2).sum());
    }

    /** Sum of squared rms current times Re Z of the part, in W. */
    public double dissipationW(ImpedanceModel part) {
        if (frequencies == null) {
            return 0;
        }
        double[] resistanceOhm = new double[squareA2.length];
        part.addImpedanceTo(frequencies, resistanceOhm, new double[squareA2.length]);
        double sum = 0;
        for (int i = squareA2.length - 1; i >= 0; i--) {
            sum += squareA2[i] * resistanceOhm[i];
        }
        return sum;
    }
}
