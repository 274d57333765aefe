package org.stillrail.electrical.stress;

import java.util.Objects;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.capacitor.Technology;

/**
 * The largest ripple current and core temperature that a team lets a technology bear.
 *
 * @param rippleShare      of the rated ripple current, above 0, at most 1
 * @param temperatureShare of the rated temperature in degC, above 0, at most 1
 * @param mostC            the rule's own ceiling in degC, null for none
 * @param source           the document that the figures come from, or that there is none
 */
public record StressRule(Technology technology, double rippleShare, double temperatureShare, Double mostC, String source) {

    public StressRule {
        Objects.requireNonNull(technology, "technology");
        Objects.requireNonNull(source, "source");
        share("rippleShare", rippleShare);
        share("temperatureShare", temperatureShare);
        if (mostC != null) {
            Require.finite("mostC", mostC);
        }
    }

    private static void share(String name, double value) {
        if (!(value > 0) || value > 1) {
            throw new IllegalArgumentException(name + " must be above 0 and at most 1, not " + value);
        }
    }

    /** The warmest core in degC that the rule allows, for a part with a rated temperature; null where neither says. */
    public Double allowedC(Double ratedTemperatureC) {
        if (ratedTemperatureC == null) {
            return mostC;
        }
        double share = temperatureShare * ratedTemperatureC;
        return mostC == null ? share : Math.min(share, mostC);
    }
}
