package org.stillrail.bank;

import java.util.UUID;
import org.stillrail.electrical.mounting.MountingGeometry;
import org.stillrail.web.Quantity;

/**
 * Where the mounting of a branch comes from, where it is not typed: exactly one of the three.
 *
 * @param geometry it is estimated from
 * @param shorted  sweep of its lands with a short in the part's place
 * @param fitted   file of the bench record that it was fitted to
 */
public record MountingOrigin(MountingGeometry geometry, ShortedSweep shorted, String fitted) {

    /**
     * @param fixtureId        of the stored fixture sweep
     * @param shortInductanceH of the short itself, taken away
     */
    public record ShortedSweep(UUID fixtureId, String name, double shortInductanceH) {
    }

    public MountingOrigin {
        if ((geometry == null ? 0 : 1) + (shorted == null ? 0 : 1) + (fitted == null ? 0 : 1) != 1) {
            throw new IllegalArgumentException("A mounting has one origin");
        }
    }

    static MountingOrigin estimated(MountingGeometry geometry) {
        return new MountingOrigin(geometry, null, null);
    }

    static MountingOrigin shorted(ShortedSweep sweep) {
        return new MountingOrigin(null, sweep, null);
    }

    /** @param fileName of the bench record */
    public static MountingOrigin fitted(String fileName) {
        return new MountingOrigin(null, null, fileName);
    }

    /** As the end of 'mounting ...'. */
    public String words() {
        if (fitted != null) {
            return "fitted to the bench record " + fitted;
        }
        if (shorted != null) {
            return "from the shorted-land sweep " + shorted.name()
                    + (shorted.shortInductanceH() > 0 ? ", less " + Quantity.format(shorted.shortInductanceH(), "H", 3) + " of the short" : "");
        }
        return "estimated from " + geometry.viaPairs() + (geometry.viaPairs() == 1 ? " via pair of " : " via pairs of ")
                + length(geometry.viaDiameterM()) + " at " + length(geometry.viaSpacingM()) + ", " + length(geometry.heightM())
                + " over the plane, lands " + length(geometry.landLengthM()) + " long and " + length(geometry.landWidthM()) + " wide";
    }

    private static String length(double metres) {
        return Quantity.format(metres, "m", 3);
    }
}
