package org.stillrail.electrical.step;

import org.stillrail.electrical.capacitor.Require;

/**
 * A load current that leaves {@code fromA} at t = 0 and reaches {@code toA} along a ramp.
 *
 * @param slewAPerS positive, the same up and down
 */
public record Load(double fromA, double toA, double slewAPerS) {

    public Load {
        Require.finite("fromA", fromA);
        Require.finite("toA", toA);
        Require.positive("slewAPerS", slewAPerS);
        Require.finite("toA - fromA", toA - fromA);
    }

    public double stepA() {
        return toA - fromA;
    }

    /** From where it went to where it came from. */
    public Load back() {
        return new Load(toA, fromA, slewAPerS);
    }

    /** Length of the ramp in s. */
    public double rampS() {
        return Math.abs(stepA()) / slewAPerS;
    }

    /** The load's slope on the ramp, with its sign, in A/s. */
    double slope() {
        return Math.copySign(slewAPerS, stepA());
    }
}
