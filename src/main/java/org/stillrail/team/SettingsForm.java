package org.stillrail.team;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.DeratingRule;
import org.stillrail.electrical.requirement.DeratingRules;
import org.stillrail.electrical.requirement.TeamSettings;
import org.stillrail.electrical.stress.StressRules;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;

/**
 * Between the fields of the settings page and a {@link SettingsDocument}. The rule of a technology has fields that begin with
 * the technology's key; a blank share means that the team has no rule for it.
 */
final class SettingsForm {

    private static final int FEWEST_POINTS = 2;
    private static final int MOST_POINTS = 1000;

    private SettingsForm() {
    }

    /** Where any field is wrong, {@code form.errors()} says which and null is returned. */
    static SettingsDocument read(Form form) {
        Double peak = form.quantity("largestSensitivityPeak", "Largest sensitivity peak", "", true);
        if (peak != null && !(peak > 1)) {
            form.errors().add("largestSensitivityPeak", "Largest sensitivity peak must be above 1");
        }
        List<DeratingRule> rules = new ArrayList<>();
        for (Technology technology : Technology.values()) {
            rule(form, technology, rules);
        }
        StressRules stress = StressRulesForm.read(form);
        List<VettingItem> items = Arrays.stream(VettingItem.values()).filter(item -> form.text("vetting." + item.name(), "A part needs " + item.label(), false) != null).toList();
        String currency = form.read("currency", "Currency", false, SettingsForm::currency);
        Integer points = form.whole("pointsPerDecade", "Points a decade", FEWEST_POINTS, MOST_POINTS, true);
        return form.errors().none() ? new SettingsDocument(new TeamSettings(peak, new DeratingRules(rules), stress, currency), items, points) : null;
    }

    private static String currency(String text) {
        String code = text.toUpperCase(Locale.ROOT);
        if (!TeamSettings.isCurrency(code)) {
            throw new IllegalArgumentException("Currency is a code of three letters such as EUR, not '" + text + "'");
        }
        return code;
    }

    private static void rule(Form form, Technology technology, List<DeratingRule> rules) {
        String of = technology.key() + ".";
        String who = technology.label() + ", ";
        Double share = form.positive(of + "share", who + "share", "%", false);
        Double upToC = form.quantity(of + "upTo", who + "up to", "degC", false);
        Double secondShare = form.positive(of + "secondShare", who + "second share", "%", false);
        Double secondC = form.quantity(of + "second", who + "second temperature", "degC", false);
        Double belowV = form.positive(of + "below", who + "rails below", "V", false);
        Double leastV = form.positive(of + "least", who + "least rated voltage", "V", false);
        String source = form.text(of + "source", who + "source", share != null);
        if (share == null) {
            if (upToC != null || secondShare != null || secondC != null || belowV != null || leastV != null) {
                form.errors().add(of + "share", "The share is missing for the other figures of this rule");
            }
            return;
        }
        if (source == null) {
            return;
        }
        try {
            rules.add(new DeratingRule(technology, share / 100, upToC, secondShare == null ? null : secondShare / 100, secondC, belowV, leastV,
                    source));
        } catch (IllegalArgumentException e) {
            form.errors().add(of + "share", "This rule does not hold together: " + words(e.getMessage()));
        }
    }

    /** The rule speaks of its fields; the page has other names for them. */
    private static String words(String message) {
        return message.replace("secondShare", "the second share").replace("secondC", "the second temperature").replace("upToC", "the first temperature")
                .replace("belowVoltageV", "'rails below'").replace("leastRatedVoltageV", "the least rated voltage");
    }

    static Form fill(SettingsDocument settings) {
        Form form = Form.empty().with("largestSensitivityPeak", Quantity.entry(settings.evaluation().largestSensitivityPeak(), ""));
        form.with("currency", settings.evaluation().currencyUnit());
        form.with("pointsPerDecade", settings.pointsPerDecade().toString());
        settings.vettingItems().forEach(item -> form.with("vetting." + item.name(), "on"));
        for (DeratingRule rule : settings.evaluation().deratingRules().rules()) {
            String of = rule.technology().key() + ".";
            form.with(of + "share", percent(rule.share()))
                    .with(of + "upTo", Quantity.entry(rule.upToC(), "degC"))
                    .with(of + "secondShare", rule.secondShare() == null ? "" : percent(rule.secondShare()))
                    .with(of + "second", Quantity.entry(rule.secondC(), "degC"))
                    .with(of + "below", Quantity.entry(rule.belowVoltageV(), "V"))
                    .with(of + "least", Quantity.entry(rule.leastRatedVoltageV(), "V"))
                    .with(of + "source", rule.source());
        }
        StressRulesForm.fill(form, settings.evaluation().stressRules());
        return form;
    }

    static String percent(double share) {
        return Quantity.entry(Quantity.percent(share), "%");
    }
}
