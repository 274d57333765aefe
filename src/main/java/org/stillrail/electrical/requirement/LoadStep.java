package org.stillrail.electrical.requirement;

/**
 * A step of the load current and the deviation allowed for it, in both directions.
 *
 * @param loadLineOhm the set-point falls by this times the inductor's current; null for none
 * @param settleBandV half width of the band in which the output counts as settled; null stands for a tenth of the allowed deviation
 */
public record LoadStep(double fromA, double toA, double slewAPerS, double allowedDeviationV, Citation citation, Double settleBandV,
        Double loadLineOhm) {

    private static final double USUAL_BAND = 0.1;

    /** Settled within a tenth of the allowed deviation, without a load line. */
    public LoadStep(double fromA, double toA, double slewAPerS, double allowedDeviationV, Citation citation) {
        this(fromA, toA, slewAPerS, allowedDeviationV, citation, null, null);
    }

    /** How far below nominal the set-point stands at a current, in V. */
    public double droopV(double atA) {
        return loadLineOhm == null ? 0 : loadLineOhm * atA;
    }

    /** As stated, or the usual one. */
    public double settledWithinV() {
        return settleBandV == null ? USUAL_BAND * allowedDeviationV : settleBandV;
    }
}
