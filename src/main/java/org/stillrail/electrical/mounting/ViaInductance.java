package org.stillrail.electrical.mounting;

import org.stillrail.electrical.capacitor.Require;

/** Closed forms for vias, all lengths in m, results in H. */
public final class ViaInductance {

    private static final double MU0 = 4e-7 * Math.PI;

    private ViaInductance() {
    }

    /**
     * Two equal vias that carry opposite currents, as a line of two round wires with all current on the surface:
     * {@code L = (mu0 h / pi) acosh(s / d)}. Textbook of transmission lines, from memory; ends are left out.
     *
     * @param heightM   h, from the lands to the plane where the current turns
     * @param diameterM d, of the drilled hole
     * @param spacingM  s, between the axes, above d
     */
    public static double pairH(double heightM, double diameterM, double spacingM) {
        Require.positive("heightM", heightM);
        Require.positive("diameterM", diameterM);
        requireApart(diameterM, spacingM);
        double ratio = spacingM / diameterM;
        return MU0 * heightM / Math.PI * Math.log(ratio + Math.sqrt(ratio * ratio - 1));
    }

    /**
     * One via without a thought for its return: {@code L = 5.08 h (ln(4 h / d) + 1)} in nH and inches. H. Johnson, M. Graham,
     * High-Speed Digital Design, 1993; formula and worked example seen second-hand. It overstates a via whose return is near.
     */
    public static double aloneH(double heightM, double diameterM) {
        Require.positive("heightM", heightM);
        Require.positive("diameterM", diameterM);
        return 5.08e-9 / 0.0254 * heightM * (Math.log(4 * heightM / diameterM) + 1);
    }

    /**
     * One via to the ground of a microstrip:
     * {@code L = mu0 / (2 pi) (h ln((h + sqrt(r^2 + h^2)) / r) + 1.5 (r - sqrt(r^2 + h^2)))}. M. E. Goldfarb, R. A. Pucel, IEEE
     * Microwave and Guided Wave Letters 1(6), 1991; formula seen second-hand in public code.
     *
     * @param radiusM r, at most the height
     */
    public static double microstripGroundH(double heightM, double radiusM) {
        Require.positive("heightM", heightM);
        Require.positive("radiusM", radiusM);
        if (radiusM > heightM) {
            throw new IllegalArgumentException("radiusM must not be above heightM of " + heightM + " m, not " + radiusM + " m");
        }
        double slant = Math.hypot(radiusM, heightM);
        return MU0 / (2 * Math.PI) * (heightM * Math.log((heightM + slant) / radiusM) + 1.5 * (radiusM - slant));
    }

    /**
     * The field between two planes that part and load share, each on a via pair of the diameter d at the distance S:
     * {@code L = (mu0 / pi) H ln(2 S / d)}. H. Johnson, Parasitic inductance of bypass capacitors, EDN; formula seen.
     *
     * @param planesApartM H
     * @param distanceM    S, above half the diameter
     */
    public static double planeSpreadingH(double planesApartM, double diameterM, double distanceM) {
        Require.positive("planesApartM", planesApartM);
        Require.positive("diameterM", diameterM);
        Require.positive("distanceM", distanceM);
        if (2 * distanceM <= diameterM) {
            throw new IllegalArgumentException("distanceM must be above half of diameterM, not " + distanceM + " m");
        }
        return MU0 / Math.PI * planesApartM * Math.log(2 * distanceM / diameterM);
    }

    static void requireApart(double diameterM, double spacingM) {
        if (!(spacingM > diameterM) || Double.isInfinite(spacingM)) {
            throw new IllegalArgumentException("spacingM must be above diameterM of " + diameterM + " m, not " + spacingM + " m");
        }
    }
}
