package org.stillrail.bank.bench;

/**
 * What an oscilloscope of a given bandwidth makes of a voltage: a first-order low-pass {@code dy/dt = (x - y) 2 pi B}, exact for
 * straight lines between samples. A real front end falls faster; near its bandwidth this is an estimate.
 */
final class LowPass {

    private static final int PERIODS = 3;

    private LowPass() {
    }

    /** From rest at the first value. */
    static double[] of(double[] time, double[] value, double bandwidthHz) {
        return run(time, value, value[0], bandwidthHz);
    }

    /** Of one period that repeats; the first and the last sample are a period apart. */
    static double[] ofPeriod(double[] time, double[] value, double bandwidthHz) {
        double start = 0;
        double[] filtered = value;
        for (int i = 0; i < PERIODS * 10; i++) {
            filtered = run(time, value, start, bandwidthHz);
            start = filtered[filtered.length - 1];
        }
        return filtered;
    }

    private static double[] run(double[] time, double[] value, double start, double bandwidthHz) {
        double[] filtered = new double[value.length];
        filtered[0] = start;
        double rate = 2 * Math.PI * bandwidthHz;
        for (int i = 1; i < value.length; i++) {
            double step = time[i] - time[i - 1];
            double kept = Math.exp(-rate * step);
            double slope = (value[i] - value[i - 1]) / step;
            // Response to a ramp lags by slope / rate.
            double settled = value[i] - slope / rate;
            filtered[i] = settled + (filtered[i - 1] - (value[i - 1] - slope / rate)) * kept;
        }
        return filtered;
    }
}
