package org.stillrail.electrical.requirement;

/**
 * The converter that feeds a rail; reusable between rails.
 *
 * @param inductanceH               of each phase; 0 where the current is drawn, which needs none
 * @param inductanceTolerancePercent plus and minus
 * @param resistanceOhm             of each phase's winding and switches; 0 likewise
 * @param switchingHz               of each phase
 * @param control                   null where only the ripple is asked about
 * @param currentLimitA             of all phases together, or null
 * @param turnsRatio                primary turns to one secondary turn of a flyback, whose inductance is the magnetising one seen from the
 *                                  primary; null elsewhere, and where nobody knows
 * @param edgeS                     time that the current takes to pass from switch to rectifier and back; null for {@link #USUAL_EDGE_S}.
 *                                  Of no account for a buck, whose inductor stands between
 * @param inductanceLeftPercent     of the inductance at small currents, what saturation leaves at the peak current, above 0, at most 100; null where
 *                                  nobody knows
 * @param drawnCurrent              for {@link Topology#DRAWN}, else null
 */
public record ConverterFigures(
        Topology topology, double inductanceH, double inductanceTolerancePercent, double resistanceOhm, int phases, double switchingHz,
        double switchingTolerancePercent, ControlFigures control, Double currentLimitA, Double turnsRatio, Double edgeS,
        Double inductanceLeftPercent, DrawnCurrent drawnCurrent) {

    /** What stands in for an edge that a rail does not state. Common practice, no source. */
    public static final double USUAL_EDGE_S = 20e-9;

    /** A converter without turns, with the usual edges and no saturation known. */
    public ConverterFigures(
            Topology topology, double inductanceH, double inductanceTolerancePercent, double resistanceOhm, int phases, double switchingHz,
            double switchingTolerancePercent, ControlFigures control, Double currentLimitA) {
        this(topology, inductanceH, inductanceTolerancePercent, resistanceOhm, phases, switchingHz, switchingTolerancePercent, control,
                currentLimitA, null, null, null, null);
    }

    /** Of any other kind, of which the current is drawn. */
    public static ConverterFigures drawn(DrawnCurrent current, double switchingHz, double switchingTolerancePercent, ControlFigures control) {
        return new ConverterFigures(Topology.DRAWN, 0, 0, 0, 1, switchingHz, switchingTolerancePercent, control, null, null, null, null, current);
    }

    /** What saturation leaves, as a share; 1 where nobody knows. */
    public double saturationShare() {
        return inductanceLeftPercent == null ? 1 : inductanceLeftPercent / 100;
    }

    /** @return the stated edge or the usual one, in s */
    public double edgeOrUsualS() {
        return edgeS == null ? USUAL_EDGE_S : edgeS;
    }
}
