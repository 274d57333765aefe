package org.stillrail.electrical.ripple;

/**
 * What a bank's impedance comes to above all its resonances: {@code s L + R + S / s}. The response of these three to a
 * piecewise-linear current is exact: L times the slope, R times the current, S times the charge.
 */
record Asymptote(double inductanceH, double resistanceOhm, double elastancePerF) {

    /** The asymptote with a known inductance that meets an impedance at one angular frequency. */
    static Asymptote through(double omega, double resistanceOhm, double reactanceOhm, double inductanceH) {
        return new Asymptote(inductanceH, resistanceOhm, -omega * (reactanceOhm - omega * inductanceH));
    }

    double reactanceOhm(double omega) {
        return omega * inductanceH - elastancePerF / omega;
    }

    /** How far an impedance is from it, in ohm. */
    double distanceOhm(double omega, double resistance, double reactance) {
        return Math.hypot(resistance - resistanceOhm, reactance - reactanceOhm(omega));
    }

    Asymptote resistivePart() {
        return new Asymptote(0, resistanceOhm, 0);
    }

    Asymptote inductivePart() {
        return new Asymptote(inductanceH, 0, 0);
    }

    Asymptote capacitivePart() {
        return new Asymptote(0, 0, elastancePerF);
    }
}
