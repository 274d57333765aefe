package org.stillrail.electrical.curve;

import java.util.Arrays;

/**
 * Strictly increasing, positive frequencies in Hz. Immutable: arrays are copied on the way in and on the way out.
 */
public final class FrequencyGrid {

    private final double[] hz;
    private double[] logHz;

    private FrequencyGrid(double[] hz) {
        this.hz = hz;
    }

    /**
     * @param frequencyHz at least one frequency, finite, positive, strictly increasing
     * @throws IllegalArgumentException naming the first index that breaks the rule
     */
    public static FrequencyGrid of(double... frequencyHz) {
        if (frequencyHz.length == 0) {
            throw new IllegalArgumentException("A grid needs at least one frequency");
        }
        double previous = 0;
        for (int i = 0; i < frequencyHz.length; i++) {
            double f = frequencyHz[i];
            if (!(f > previous) || Double.isInfinite(f)) {
                throw new IllegalArgumentException(
                        "Frequencies must be positive, finite and strictly increasing; index " + i + " is " + f
                                + " Hz after " + previous + " Hz");
            }
            previous = f;
        }
        return new FrequencyGrid(frequencyHz.clone());
    }

    /**
     * Points evenly spaced on a logarithmic axis, both ends included exactly.
     *
     * @param points at least 2
     */
    public static FrequencyGrid logSpaced(double startHz, double stopHz, int points) {
        if (points < 2) {
            throw new IllegalArgumentException("A log-spaced grid needs at least 2 points, not " + points);
        }
        if (!(startHz > 0) || !(stopHz > startHz) || Double.isInfinite(stopHz)) {
            throw new IllegalArgumentException("A log-spaced grid needs 0 < start < stop, not " + startHz + " Hz to " + stopHz + " Hz");
        }
        double[] hz = new double[points];
        double logStart = Math.log(startHz);
        double step = (Math.log(stopHz) - logStart) / (points - 1);
        for (int i = 0; i < points; i++) {
            hz[i] = Math.exp(logStart + i * step);
        }
        hz[0] = startHz;
        hz[points - 1] = stopHz;
        return of(hz);
    }

    public int size() {
        return hz.length;
    }

    public double hz(int index) {
        return hz[index];
    }

    /** Angular frequency in rad/s. */
    public double omega(int index) {
        return 2 * Math.PI * hz[index];
    }

    /** Natural logarithms of the frequencies in Hz; worked out once, at the first call, for all models on the same grid. */
    public double logHz(int index) {
        double[] logs = logHz;
        if (logs == null) {
            logs = new double[hz.length];
            for (int i = 0; i < logs.length; i++) {
                logs[i] = Math.log(hz[i]);
            }
            logHz = logs;
        }
        return logs[index];
    }

    public double startHz() {
        return hz[0];
    }

    public double stopHz() {
        return hz[hz.length - 1];
    }

    /** A copy of the frequencies in Hz. */
    public double[] toArray() {
        return hz.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FrequencyGrid grid && Arrays.equals(hz, grid.hz);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(hz);
    }

    @Override
    public String toString() {
        return hz.length + " points from " + startHz() + " Hz to " + stopHz() + " Hz";
    }
}
