package org.stillrail.electrical.mounting;

import org.stillrail.electrical.capacitor.Require;

/**
 * How one part sits on the board, all lengths in m.
 *
 * @param heightM        from the lands down to the nearest plane that carries the current back
 * @param landLengthM    of lands and traces from the part's ends to the vias, both ends together
 * @param landWidthM     mean width of these
 * @param viaPairs       vias of one polarity, each with one of the other polarity as its neighbour; 1 or more
 * @param viaDiameterM   of the drilled hole
 * @param viaSpacingM    between the axes of a pair
 * @param copperM        thickness of lands and of the walls of the holes; null leaves the resistance out
 */
public record MountingGeometry(
        double heightM, double landLengthM, double landWidthM, int viaPairs, double viaDiameterM, double viaSpacingM, Double copperM) {

    public static final int MOST_PAIRS = 32;

    public MountingGeometry {
        Require.positive("heightM", heightM);
        Require.notNegative("landLengthM", landLengthM);
        Require.positive("landWidthM", landWidthM);
        Require.positive("viaDiameterM", viaDiameterM);
        ViaInductance.requireApart(viaDiameterM, viaSpacingM);
        if (viaPairs < 1 || viaPairs > MOST_PAIRS) {
            throw new IllegalArgumentException("viaPairs must be 1 to " + MOST_PAIRS + ", not " + viaPairs);
        }
        if (copperM != null) {
            Require.positive("copperM", copperM);
            if (2 * copperM > viaDiameterM) {
                throw new IllegalArgumentException("copperM must be at most half of viaDiameterM, not " + copperM + " m");
            }
        }
    }
}
