package org.stillrail.electrical.requirement;

import java.util.Objects;
import java.util.regex.Pattern;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.stress.StressRules;

/**
 * What a team sets for all its rails.
 *
 * @param largestSensitivityPeak of 1 / |1 + T| round the crossover, above 1; 2 keeps T at least 0.5 away from -1
 * @param stressRules            on ripple current, temperature and life; absent is {@link StressRules#DEFAULT}
 * @param currency               of all costs, a code of ISO 4217 such as EUR; null where none is said
 */
public record TeamSettings(double largestSensitivityPeak, DeratingRules deratingRules, StressRules stressRules, String currency) {

    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

    public static final TeamSettings DEFAULT = new TeamSettings(2, DeratingRules.DEFAULT, StressRules.DEFAULT, null);

    public TeamSettings {
        Require.finite("largestSensitivityPeak", largestSensitivityPeak);
        if (!(largestSensitivityPeak > 1)) {
            throw new IllegalArgumentException("largestSensitivityPeak must be above 1, not " + largestSensitivityPeak);
        }
        Objects.requireNonNull(deratingRules, "deratingRules");
        stressRules = stressRules == null ? StressRules.DEFAULT : stressRules;
        if (currency != null && !isCurrency(currency)) {
            throw new IllegalArgumentException("currency must be three capital letters, not '" + currency + "'");
        }
    }

    /** Whether it is spelt as a code of ISO 4217. */
    public static boolean isCurrency(String code) {
        return CURRENCY.matcher(code).matches();
    }

    /** Unit of a cost: empty where no currency is said. */
    public String currencyUnit() {
        return currency == null ? "" : currency;
    }

    public TeamSettings withCurrency(String code) {
        return new TeamSettings(largestSensitivityPeak, deratingRules, stressRules, code);
    }

    public TeamSettings withDeratingRules(DeratingRules rules) {
        return new TeamSettings(largestSensitivityPeak, rules, stressRules, currency);
    }

    public TeamSettings withStressRules(StressRules rules) {
        return new TeamSettings(largestSensitivityPeak, deratingRules, rules, currency);
    }

    public TeamSettings withLargestSensitivityPeak(double peak) {
        return new TeamSettings(peak, deratingRules, stressRules, currency);
    }
}
