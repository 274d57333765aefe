package org.stillrail.electrical.requirement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillrail.electrical.capacitor.Technology;

/** A team's derating rules, at most one for each technology. */
public record DeratingRules(List<DeratingRule> rules) {

    private static final String PRACTICE = "common practice, no source";

    /**
     * Where a public document speaks of the technology, its figures; else round figures of common practice. The documents'
     * side rule for ceramics on low voltages is left out: it guards against failures of high-impedance circuits.
     */
    public static final DeratingRules DEFAULT = new DeratingRules(List.of(
            PublishedDerating.MIL_STD_975M_CERAMIC.rule(Technology.CERAMIC_CLASS_1),
            PublishedDerating.MIL_STD_975M_CERAMIC.rule(Technology.CERAMIC_CLASS_2),
            PublishedDerating.MIL_STD_975M_FILM.rule(Technology.FILM),
            PublishedDerating.MIL_STD_975M_SOLID_TANTALUM.rule(Technology.TANTALUM_MNO2),
            DeratingRule.constant(Technology.TANTALUM_POLYMER, 0.8, PRACTICE),
            DeratingRule.constant(Technology.WET_ALUMINIUM, 0.8, PRACTICE),
            DeratingRule.constant(Technology.POLYMER_ALUMINIUM, 0.9, PRACTICE),
            DeratingRule.constant(Technology.HYBRID, 0.8, PRACTICE),
            DeratingRule.constant(Technology.DOUBLE_LAYER, 0.8, PRACTICE)));

    public DeratingRules {
        rules = List.copyOf(rules);
        if (rules.stream().map(DeratingRule::technology).distinct().count() < rules.size()) {
            throw new IllegalArgumentException("A technology may have one derating rule only");
        }
    }

    public Optional<DeratingRule> of(Technology technology) {
        return rules.stream().filter(rule -> rule.technology() == technology).findFirst();
    }

    /** These rules with one put in the place of the technology's present one. */
    public DeratingRules with(DeratingRule rule) {
        List<DeratingRule> changed = new ArrayList<>(rules);
        changed.removeIf(present -> present.technology() == rule.technology());
        changed.add(rule);
        return new DeratingRules(changed);
    }
}
