package org.stillrail.electrical.stress;

import org.stillrail.electrical.capacitor.Require;

/** The voltage down to which a bank is bled, and who says so. */
public record SafeVoltage(double volts, String source) {

    private static final double SHOCK_LIMIT_V = 50;

    public SafeVoltage {
        Require.positive("volts", volts);
    }

    /**
     * From above 50 V: down to 50 V, which the U.S. National Electrical Code, section 460.6, asks of capacitors up to 600 V within a minute
     * (on a public page, seen second-hand). At and below 50 V: 1 V, so that nothing sparks or is harmed (common practice, no source).
     */
    public static SafeVoltage defaultFrom(double chargedV) {
        return chargedV > SHOCK_LIMIT_V
                ? new SafeVoltage(SHOCK_LIMIT_V, "U.S. National Electrical Code 460.6, seen second-hand")
                : new SafeVoltage(Math.min(1, chargedV), "common practice, no source");
    }
}
