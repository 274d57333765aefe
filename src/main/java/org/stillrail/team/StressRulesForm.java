package org.stillrail.team;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.stress.StressRule;
import org.stillrail.electrical.stress.StressRules;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/**
 * Between the fields of the settings page and the rules on ripple current, temperature and life. A blank figure takes nothing off the
 * datasheet's own.
 */
final class StressRulesForm {

    private StressRulesForm() {
    }

    /** Where a field is wrong, {@code form.errors()} says which and the rules are not to be used. */
    static StressRules read(Form form) {
        List<StressRule> rules = new ArrayList<>();
        for (Technology technology : Technology.values()) {
            rule(form, technology, rules);
        }
        return new StressRules(rules);
    }

    private static void rule(Form form, Technology technology, List<StressRule> rules) {
        String of = technology.key() + ".stress.";
        String who = technology.label() + ", ";
        Double ripple = share(form, of + "ripple", who + "share of the ripple rating");
        Double temperature = share(form, of + "temperature", who + "share of the rated temperature");
        Double marginK = form.notNegative(of + "margin", who + "margin below the rated temperature", "K", false);
        Double mostC = form.quantity(of + "most", who + "highest temperature", "degC", false);
        Double lifeFactor = form.positive(of + "life", who + "life over the rail's", "", false);
        String source = form.text(of + "source", who + "source", false);
        boolean own = ripple != null || temperature != null || marginK != null || mostC != null || lifeFactor != null;
        if (own && source == null) {
            form.errors().add(of + "source", "Say where these figures come from, if only 'common practice, no source'");
        }
        if (own && form.errors().none()) {
            rules.add(new StressRule(technology, or(ripple, 100) / 100, or(temperature, 100) / 100, or(marginK, 0), mostC, or(lifeFactor, 1), source));
        }
    }

    private static Double share(Form form, String name, String label) {
        Double percent = form.positive(name, label, "%", false);
        if (percent != null && percent > 100) {
            form.errors().add(name, label + " must be at most 100 %");
        }
        return percent;
    }

    private static double or(Double value, double otherwise) {
        return value == null ? otherwise : value;
    }

    static void fill(Form form, StressRules rules) {
        for (StressRule rule : rules.rules()) {
            String of = rule.technology().key() + ".stress.";
            form.with(of + "ripple", rule.rippleShare() == 1 ? "" : SettingsForm.percent(rule.rippleShare()))
                    .with(of + "temperature", rule.temperatureShare() == 1 ? "" : SettingsForm.percent(rule.temperatureShare()))
                    .with(of + "margin", rule.marginK() == 0 ? "" : Quantity.entry(rule.marginK(), "K"))
                    .with(of + "most", Quantity.entry(rule.mostC(), "degC"))
                    .with(of + "life", rule.lifeFactor() == 1 ? "" : Quantity.entry(rule.lifeFactor(), ""))
                    .with(of + "source", rule.source());
        }
    }
}
