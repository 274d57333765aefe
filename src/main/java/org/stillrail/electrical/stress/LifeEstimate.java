package org.stillrail.electrical.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.stillrail.electrical.capacitor.Technology;

/**
 * How long a part lasts at its core temperature.
 *
 * @param hours  null where it is not modelled or not known; {@code reason} then says why
 * @param rule   null likewise
 * @param reason null where {@code hours} is given
 * @param notes  what a reader should know, in sentences
 */
public record LifeEstimate(Double hours, LifeRule rule, String reason, List<String> notes) {

    /** Fifteen years: makers seldom claim more (common practice, no source). */
    private static final double SELDOM_CLAIMED_H = 131_400;
    private static final double PARTS_BELOW_C = 60;

    public LifeEstimate {
        notes = List.copyOf(notes);
    }

    /**
     * @param rating       null where the datasheet gives none
     * @param heat         null where nobody can tell the core's temperature
     * @param voltageShare applied over rated voltage, for the voltage term; null is 1
     */
    public static LifeEstimate of(Technology technology, LifeRating rating, SelfHeating heat, Double voltageShare) {
        Optional<LifeRule> rule = LifeRule.of(technology);
        if (rule.isEmpty()) {
            return none("The life of " + technology.label() + " is not modelled: no public rule holds for all its parts.");
        }
        if (rating == null) {
            return none("The datasheet figure for life is missing.");
        }
        if (heat == null) {
            return none("The temperature of the core is not known.");
        }
        if (heat.runsAway()) {
            return none(heat.sentence());
        }
        double cooler = rating.coreC() - heat.coreC();
        double share = voltageShare == null ? 1 : voltageShare;
        double hours = rating.hours() * rule.get().factor(cooler) * Math.max(0, rating.voltage().factor(share));
        return new LifeEstimate(hours, rule.get(), null, notes(technology, rating, heat, hours, cooler, voltageShare));
    }

    private static LifeEstimate none(String reason) {
        return new LifeEstimate(null, null, reason, List.of());
    }

    private static List<String> notes(Technology technology, LifeRating rating, SelfHeating heat, double hours, double coolerK, Double voltageShare) {
        List<String> notes = new ArrayList<>();
        notes.add("Rule: " + LifeRule.source(technology) + ".");
        if (rating.voltage() == LifeRating.VoltageTerm.LARGE_CAN) {
            notes.add(voltageShare == null ? "The voltage over the rated one is not known, so nothing is added for it."
                    : String.format(Locale.ROOT, "A large can at %.0f %% of its voltage: life times %.2f, a maker's rule seen second-hand.",
                            100 * voltageShare, Math.max(0, rating.voltage().factor(voltageShare))));
        }
        if (heat.estimated()) {
            notes.add("The thermal resistance behind it is an estimate.");
        }
        if (coolerK < 0) {
            notes.add(String.format(Locale.ROOT,
                    "The core is %.1f K warmer than in the datasheet's test; the rule is stretched there.", -coolerK));
        }
        if (heat.coreC() < PARTS_BELOW_C && LifeRule.of(technology).orElseThrow() == LifeRule.TEN_DEGREES) {
            notes.add("Below 60 degC the ten-degree rule and the Arrhenius law part; the rule is the shorter of the two.");
        }
        if (hours > SELDOM_CLAIMED_H) {
            notes.add("That is more than fifteen years, beyond which makers seldom claim anything: seals and soldering set the end.");
        }
        if (rating.coreRiseK() == 0) {
            notes.add("No warming in the datasheet's own test is known; none is counted, which is on the safe side.");
        }
        return notes;
    }

    public boolean modelled() {
        return hours != null;
    }
}
