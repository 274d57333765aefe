package org.stillrail.sweepfile.accuracy;

/**
 * What the instrument is accurate to after calibration, as its documents give it. All are largest errors, not standard deviations.
 *
 * @param reflection        error of S11, absolute, as a linear number (0.01 is -40 dB)
 * @param transmission      error of S21 over S21 (0.01 is about 0.1 dB)
 * @param transmissionFloor error of S21 that is there without a signal: leakage and noise, absolute, linear
 * @param impedance         error of Z over |Z| of an impedance analyser
 */
public record InstrumentAccuracy(double reflection, double transmission, double transmissionFloor, double impedance) {

    public InstrumentAccuracy {
        require("reflection", reflection);
        require("transmission", transmission);
        require("transmissionFloor", transmissionFloor);
        require("impedance", impedance);
    }

    /** From a level in dB: -40 dB is 0.01. */
    public static double linear(double decibel) {
        return Math.pow(10, decibel / 20);
    }

    private static void require(String name, double value) {
        if (!(value >= 0 && value < 1)) {
            throw new IllegalArgumentException(name + " must be 0 or more and below 1, not " + value);
        }
    }
}
