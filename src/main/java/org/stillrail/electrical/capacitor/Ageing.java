package org.stillrail.electrical.capacitor;

/**
 * Ageing of class 2 ceramics: in each decade of time since the last heat above the Curie point a constant per cent of the
 * capacitance at the referee time is lost, {@code C(t) = C(t0) [1 - (k / 100) log10(t / t0)]}. Linear in log t, as
 * EIA-198 and IEC 60384-22 write it (from memory); the compound form {@code (1 - k / 100)^log10(t / t0)} lies within half a
 * per cent of it. The law is not used before the first hour.
 *
 * @param percentPerDecade k, from 0 to below 20
 * @param refereeHours     t0, against which the tolerance holds
 */
public record Ageing(double percentPerDecade, double refereeHours) {

    public static final double REFEREE_HOURS = 1000;
    private static final double FIRST_HOUR = 1;

    public Ageing {
        Require.notNegative("percentPerDecade", percentPerDecade);
        Require.positive("refereeHours", refereeHours);
        if (percentPerDecade >= 20) {
            throw new IllegalArgumentException("percentPerDecade must be below 20, not " + percentPerDecade);
        }
    }

    public static Ageing ofPercentPerDecade(double percentPerDecade) {
        return new Ageing(percentPerDecade, REFEREE_HOURS);
    }

    /**
     * Capacitance over that at the referee time, never below 0.01.
     *
     * @param hours since the last heat; null is the referee time
     */
    public double share(Double hours) {
        if (hours == null) {
            return 1;
        }
        Require.notNegative("ageHours", hours);
        double decades = Math.log10(Math.max(FIRST_HOUR, hours) / refereeHours);
        return Math.max(0.01, 1 - percentPerDecade / 100 * decades);
    }
}
