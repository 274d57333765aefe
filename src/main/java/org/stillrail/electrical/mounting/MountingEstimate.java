package org.stillrail.electrical.mounting;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.bank.SeriesPath;

/**
 * What the mounting of one part adds in series, estimated from its geometry: lands as a strip over the plane, via pairs as
 * lines of two wires in parallel. The part's own body is in its ESL; the planes beyond belong to the shared path.
 *
 * @param landH  share of lands and traces
 * @param viaH   share of all via pairs together
 * @param path   both, with the DC resistance of the copper where its thickness is known
 * @param notes  what the estimate leaves out, in sentences
 */
public record MountingEstimate(double landH, double viaH, SeriesPath path, List<String> notes) {

    /** Annealed copper at 20 degC, the international standard of 1913 (from memory). */
    private static final double COPPER_OHM_M = 1.7241e-8;
    private static final double CLOSE = 3;

    public MountingEstimate {
        notes = List.copyOf(notes);
    }

    public static MountingEstimate of(MountingGeometry geometry) {
        double land = LandInductance.overPlaneH(geometry.landLengthM(), geometry.landWidthM(), geometry.heightM());
        double via = ViaInductance.pairH(geometry.heightM(), geometry.viaDiameterM(), geometry.viaSpacingM()) / geometry.viaPairs();
        List<String> notes = new ArrayList<>();
        notes.add("Estimated from the geometry: lands as a microstrip in air, vias as a line of two wires; within some 20 % at best.");
        if (geometry.viaPairs() > 1) {
            notes.add("The via pairs are counted as if none saw another; where they stand close, the inductance is higher.");
        }
        if (geometry.viaSpacingM() > CLOSE * geometry.heightM()) {
            notes.add("The vias stand further apart than three times their height; the plane between them then matters more than the line"
                    + " of two wires tells, and the estimate is high.");
        }
        return new MountingEstimate(land, via, new SeriesPath(resistanceOhm(geometry), land + via), notes);
    }

    private static double resistanceOhm(MountingGeometry geometry) {
        if (geometry.copperM() == null) {
            return 0;
        }
        double copper = geometry.copperM();
        double wall = Math.PI * (geometry.viaDiameterM() - copper) * copper;
        double vias = COPPER_OHM_M * 2 * geometry.heightM() / wall / geometry.viaPairs();
        return vias + COPPER_OHM_M * geometry.landLengthM() / (geometry.landWidthM() * copper);
    }
}
