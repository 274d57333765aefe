package org.stillrail.electrical.stress;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stillrail.electrical.capacitor.Technology;

/** A team's rules for ripple current, temperature and life, at most one for each technology. */
public record StressRules(List<StressRule> rules) {

    private static final String DATASHEET = "the datasheet's own ratings, nothing taken off (common practice, no source)";
    private static final String RL_TR = "RL-TR-92-11, table 9-2 (read in a transcription): ";

    /**
     * Ceramics at 85 % of their rated temperature and solid tantalum up to 85 degC, as a public document has it for chips; all
     * else at the datasheet's own ratings. No public figure for ripple current or for a factor on life was found.
     */
    public static final StressRules DEFAULT = new StressRules(List.of(
            new StressRule(Technology.CERAMIC_CLASS_1, 1, 0.85, 0, null, 1, RL_TR + "85 % of the rated temperature"),
            new StressRule(Technology.CERAMIC_CLASS_2, 1, 0.85, 0, null, 1, RL_TR + "85 % of the rated temperature"),
            new StressRule(Technology.TANTALUM_MNO2, 1, 1, 0, 85.0, 1, RL_TR + "85 degC")));

    public StressRules {
        rules = List.copyOf(rules);
        if (rules.stream().map(StressRule::technology).distinct().count() < rules.size()) {
            throw new IllegalArgumentException("A technology may have one stress rule only");
        }
    }

    /** The team's rule; where it has none, the datasheet's ratings. */
    public StressRule of(Technology technology) {
        return rules.stream().filter(rule -> rule.technology() == technology).findFirst()
                .orElse(StressRule.ofDatasheet(technology, DATASHEET));
    }

    /** These rules with one put in the place of the technology's present one. */
    public StressRules with(StressRule rule) {
        List<StressRule> changed = new ArrayList<>(rules);
        changed.removeIf(present -> present.technology() == rule.technology());
        changed.add(rule);
        return new StressRules(changed);
    }

    /** One rule for each technology that Stillrail knows. */
    public List<StressRule> all() {
        return Arrays.stream(Technology.values()).map(this::of).toList();
    }
}
