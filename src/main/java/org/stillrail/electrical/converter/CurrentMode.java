package org.stillrail.electrical.converter;

import org.stillrail.electrical.capacitor.Require;

/**
 * Peak current mode with slope compensation. The inductor is a current source of gain {@code 1 / senseOhm}, with the
 * sampling of the peak comparator as a second-order lag at half the switching frequency:
 *
 * <pre>
 * H(s) = 1 / (1 + s / (wn Qn) + s^2 / wn^2)     wn = pi switchingHz     Qn = 1 / (pi (mc D' - 0.5))
 * mc = 1 + slopeAPerS / rise     rise = (inputV - outputV) / L     D' = 1 - outputV / inputV
 * </pre>
 *
 * Source: R. B. Ridley, A new, continuous-time model for current-mode control, 1991 (from memory). L is the combined
 * inductance, so sense and slope belong to the combined current too.
 *
 * @param senseOhm   volts of command for one ampere of combined inductor current, positive
 * @param slopeAPerS slope of the compensating ramp in terms of that current, zero or positive
 */
public record CurrentMode(double senseOhm, double slopeAPerS) implements Control {

    public CurrentMode {
        Require.positive("senseOhm", senseOhm);
        Require.notNegative("slopeAPerS", slopeAPerS);
    }

    /** {@code 1 / Qn = pi (mc D' - 0.5)}; zero or below where the current loop itself is unstable. */
    public double inverseSamplingQ(PowerStage stage) {
        double compensation = 1 + slopeAPerS / stage.steepestRiseAPerS();
        return Math.PI * (compensation * (1 - stage.duty()) - 0.5);
    }

    /** wn in rad/s. */
    public double samplingOmega(PowerStage stage) {
        return Math.PI * stage.switchingHz();
    }
}
