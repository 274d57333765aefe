package org.stillrail.electrical.ripple;

import org.stillrail.electrical.capacitor.Require;

/** Any periodic current made of straight lines: linear between points, and from the last back to the first. */
public final class PiecewiseLinearCurrent implements PeriodicCurrent {

    private final PiecewiseLinear waveform;

    private PiecewiseLinearCurrent(PiecewiseLinear waveform) {
        this.waveform = waveform;
    }

    /**
     * @param periodS  positive
     * @param timeS    at least 2, from 0, strictly increasing, before the end of the period; a last point at the very end
     *                 is taken too when it repeats the first current
     * @param currentA same length, finite
     * @throws IllegalArgumentException naming the array and the index that break a rule
     */
    public static PiecewiseLinearCurrent of(double periodS, double[] timeS, double[] currentA) {
        Require.positive("periodS", periodS);
        int n = timeS.length;
        if (currentA.length != n) {
            throw new IllegalArgumentException("timeS and currentA must be equally long, not " + n + " and " + currentA.length);
        }
        if (n < 2) {
            throw new IllegalArgumentException("timeS must hold at least 2 points, not " + n);
        }
        if (timeS[0] != 0) {
            throw new IllegalArgumentException("timeS[0] must be 0, not " + timeS[0]);
        }
        for (int i = 0; i < n; i++) {
            Require.finite("currentA[" + i + "]", currentA[i]);
            if (i > 0 && !(timeS[i] > timeS[i - 1])) {
                throw new IllegalArgumentException("timeS[" + i + "] must be after " + timeS[i - 1] + " s, not " + timeS[i] + " s");
            }
        }
        if (n > 2 && timeS[n - 1] == periodS && currentA[n - 1] == currentA[0]) {
            n--;
        }
        if (!(timeS[n - 1] < periodS)) {
            throw new IllegalArgumentException(
                    "timeS[" + (n - 1) + "] must be before the end of the period at " + periodS + " s, not " + timeS[n - 1] + " s");
        }
        return new PiecewiseLinearCurrent(PiecewiseLinear.of(periodS, timeS, currentA, n));
    }

    @Override
    public double periodS() {
        return waveform.periodS();
    }

    @Override
    public PiecewiseLinear waveform() {
        return waveform;
    }
}
