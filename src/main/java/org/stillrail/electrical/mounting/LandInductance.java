package org.stillrail.electrical.mounting;

import org.stillrail.electrical.capacitor.Require;

/**
 * A strip of copper over a plane, from the impedance of a microstrip in air: {@code L' = Z0 / c}. With u = width over height,
 * {@code Z0 = 60 ln(F / u + sqrt(1 + (2 / u)^2))} ohm, {@code F = 6 + (2 pi - 6) exp(-(30.666 / u)^0.7528)}. E. Hammerstad,
 * O. Jensen, Accurate models for microstrip computer-aided design, IEEE MTT-S 1980; from memory. A wide strip tends to mu0 h / w.
 */
public final class LandInductance {

    private static final double LIGHT_M_PER_S = 299_792_458;
    private static final double WAVE_OHM = 4e-7 * Math.PI * LIGHT_M_PER_S;

    private LandInductance() {
    }

    /** In H; all lengths in m. */
    public static double overPlaneH(double lengthM, double widthM, double heightM) {
        Require.notNegative("lengthM", lengthM);
        Require.positive("widthM", widthM);
        Require.positive("heightM", heightM);
        double u = widthM / heightM;
        double form = 6 + (2 * Math.PI - 6) * Math.exp(-Math.pow(30.666 / u, 0.7528));
        double z0 = WAVE_OHM / (2 * Math.PI) * Math.log(form / u + Math.sqrt(1 + 4 / (u * u)));
        return lengthM * z0 / LIGHT_M_PER_S;
    }
}
