package org.stillrail.electrical.stress;

import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.capacitor.Technology;

/**
 * The lowest voltage across a part against what it bears backwards.
 *
 * <p>Polar parts bear none unless their datasheet says so. For solid tantalum with manganese dioxide a public page (seen
 * second-hand) gives short excursions: 10 % of the rated voltage and at most 1 V at 25 degC, 3 % and 0.5 V at 85 degC, 1 % and 0.1 V
 * at 125 degC; straight lines between, nothing above. Parts without polarity bear their rated voltage either way.
 *
 * @param lowestV  that the part sees, negative where it is reversed
 * @param allowedV how far below 0 it may go, 0 or positive; null where the part has no polarity and no rated voltage is known
 * @param source   where {@code allowedV} comes from
 */
public record ReverseVoltage(double lowestV, Double allowedV, String source) {

    private static final CharacteristicCurve TANTALUM_SHARE = CharacteristicCurve.linear(25, 0.1, 85, 0.03, 125, 0.01);
    private static final CharacteristicCurve TANTALUM_MOST_V = CharacteristicCurve.linear(25, 1, 85, 0.5, 125, 0.1);
    private static final double TANTALUM_HOTTEST_C = 125;

    /**
     * @param ratedV     null where not known
     * @param datasheetV reverse voltage that the datasheet allows, a positive number, or null
     */
    public static ReverseVoltage of(Technology technology, Double ratedV, Double datasheetV, double temperatureC, double lowestV) {
        Require.finite("lowestV", lowestV);
        if (datasheetV != null) {
            Require.notNegative("datasheetV", datasheetV);
            return new ReverseVoltage(lowestV, datasheetV, "datasheet");
        }
        if (!technology.polar()) {
            return new ReverseVoltage(lowestV, ratedV, "no polarity: the rated voltage holds either way");
        }
        if (technology == Technology.TANTALUM_MNO2 && ratedV != null) {
            return new ReverseVoltage(lowestV, tantalumV(ratedV, temperatureC),
                    "short excursions of solid tantalum, on a public page, seen second-hand");
        }
        return new ReverseVoltage(lowestV, 0.0, "common practice, no source: no reverse voltage unless the datasheet allows it");
    }

    private static double tantalumV(double ratedV, double temperatureC) {
        return temperatureC > TANTALUM_HOTTEST_C ? 0
                : Math.min(TANTALUM_SHARE.at(temperatureC) * ratedV, TANTALUM_MOST_V.at(temperatureC));
    }

    /** null where nothing is known to compare with. */
    public Boolean kept() {
        return allowedV == null && lowestV < 0 ? null : (Boolean) (lowestV >= 0 || -lowestV <= allowedV);
    }
}
