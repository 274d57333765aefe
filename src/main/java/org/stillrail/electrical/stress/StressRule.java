package org.stillrail.electrical.stress;

import java.util.Objects;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.capacitor.Technology;

/**
 * The largest ripple current and core temperature that a team lets a technology bear, and how much longer than asked it must last.
 *
 * @param rippleShare      of the rated ripple current, above 0, at most 1
 * @param temperatureShare of the rated temperature in degC, above 0, at most 1
 * @param marginK          that the core must stay below the rated temperature, 0 or more
 * @param mostC            the rule's own ceiling in degC, null for none
 * @param lifeFactor       estimated life over the life that a rail asks, at least; above 0
 * @param source           the document that the figures come from, or that there is none
 */
public record StressRule(
        Technology technology, double rippleShare, double temperatureShare, double marginK, Double mostC, double lifeFactor, String source) {

    public StressRule {
        Objects.requireNonNull(technology, "technology");
        Objects.requireNonNull(source, "source");
        share("rippleShare", rippleShare);
        share("temperatureShare", temperatureShare);
        Require.notNegative("marginK", marginK);
        if (mostC != null) {
            Require.finite("mostC", mostC);
        }
        Require.positive("lifeFactor", lifeFactor);
    }

    /** The datasheet's own ratings, nothing taken off. */
    public static StressRule ofDatasheet(Technology technology, String source) {
        return new StressRule(technology, 1, 1, 0, null, 1, source);
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
        double allowed = Math.min(temperatureShare * ratedTemperatureC, ratedTemperatureC - marginK);
        return mostC == null ? allowed : Math.min(allowed, mostC);
    }
}
