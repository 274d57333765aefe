package org.stillrail.electrical.requirement;

import java.util.Objects;
import org.stillrail.electrical.capacitor.Require;

/**
 * What a team sets for all its rails.
 *
 * @param largestSensitivityPeak of 1 / |1 + T| round the crossover, above 1; 2 keeps T at least 0.5 away from -1
 */
public record TeamSettings(double largestSensitivityPeak, DeratingRules deratingRules) {

    public static final TeamSettings DEFAULT = new TeamSettings(2, DeratingRules.DEFAULT);

    public TeamSettings {
        Require.finite("largestSensitivityPeak", largestSensitivityPeak);
        if (!(largestSensitivityPeak > 1)) {
            throw new IllegalArgumentException("largestSensitivityPeak must be above 1, not " + largestSensitivityPeak);
        }
        Objects.requireNonNull(deratingRules, "deratingRules");
    }

    public TeamSettings withDeratingRules(DeratingRules rules) {
        return new TeamSettings(largestSensitivityPeak, rules);
    }

    public TeamSettings withLargestSensitivityPeak(double peak) {
        return new TeamSettings(peak, deratingRules);
    }
}
