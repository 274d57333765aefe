package org.stillrail.electrical.requirement;

import java.util.Objects;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.stress.StressRules;

/**
 * What a team sets for all its rails.
 *
 * @param largestSensitivityPeak of 1 / |1 + T| round the crossover, above 1; 2 keeps T at least 0.5 away from -1
 * @param stressRules            on ripple current, temperature and life; absent is {@link StressRules#DEFAULT}
 */
public record TeamSettings(double largestSensitivityPeak, DeratingRules deratingRules, StressRules stressRules) {

    public static final TeamSettings DEFAULT = new TeamSettings(2, DeratingRules.DEFAULT, StressRules.DEFAULT);

    public TeamSettings {
        Require.finite("largestSensitivityPeak", largestSensitivityPeak);
        if (!(largestSensitivityPeak > 1)) {
            throw new IllegalArgumentException("largestSensitivityPeak must be above 1, not " + largestSensitivityPeak);
        }
        Objects.requireNonNull(deratingRules, "deratingRules");
        stressRules = stressRules == null ? StressRules.DEFAULT : stressRules;
    }

    public TeamSettings withDeratingRules(DeratingRules rules) {
        return new TeamSettings(largestSensitivityPeak, rules, stressRules);
    }

    public TeamSettings withStressRules(StressRules rules) {
        return new TeamSettings(largestSensitivityPeak, deratingRules, rules);
    }

    public TeamSettings withLargestSensitivityPeak(double peak) {
        return new TeamSettings(peak, deratingRules, stressRules);
    }
}
