package org.stillrail.demo;

/** How class 2 ceramics lose capacitance; the shapes are textbook ones, the figures invented. */
final class Ceramic {

    /** Per cent of the 1000-hour capacitance in each decade of hours since soldering. */
    private static final double AGEING_PERCENT_PER_DECADE = 2.5;

    private static final double REFEREE_HOURS = 1000;

    private Ceramic() {
    }

    /** 1 / (1 + (V / Vhalf)^n): what is left at a DC bias. */
    static double leftAtBias(double biasV, double halfV, double exponent) {
        return 1 / (1 + StrictMath.pow(biasV / halfV, exponent));
    }

    static double leftAtAge(double hoursSinceSoldering) {
        return 1 - AGEING_PERCENT_PER_DECADE / 100 * StrictMath.log10(hoursSinceSoldering / REFEREE_HOURS);
    }
}
