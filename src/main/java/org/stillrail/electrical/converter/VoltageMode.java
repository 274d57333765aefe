package org.stillrail.electrical.converter;

import org.stillrail.electrical.capacitor.Require;

/**
 * The compensator's output is compared with a ramp: duty = output / rampV, later by {@code delayS}.
 *
 * @param rampV  peak-to-peak height of the ramp, positive
 * @param delayS exact delay of modulator and computation, zero or positive
 */
public record VoltageMode(double rampV, double delayS) implements Control {

    public VoltageMode {
        Require.positive("rampV", rampV);
        Require.notNegative("delayS", delayS);
    }
}
