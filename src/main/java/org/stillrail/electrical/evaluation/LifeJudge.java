package org.stillrail.electrical.evaluation;

import java.util.List;
import java.util.stream.Collectors;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;
import org.stillrail.electrical.stress.LifeEstimate;
import org.stillrail.electrical.stress.LifeRule;
import org.stillrail.electrical.stress.PartStress;

/**
 * How long each part lasts at the temperature of its core, held all the time, against the rail's life and the team's factor. A technology
 * without a public rule is not modelled and does not count; the sentence names it.
 */
final class LifeJudge extends StressJudge {

    private final List<Technology> notModelled;

    LifeJudge(EvaluationInput input) {
        super(input, Requirement.LIFE, Bound.AT_LEAST, "h", input.rail().life() == null ? null : input.rail().life().citation());
        this.notModelled = input.branches().stream().map(BranchInput::technology)
                .filter(technology -> technology != null && LifeRule.of(technology).isEmpty()).distinct().toList();
    }

    @Override
    String notAsked() {
        return rail.life() == null ? "The rail asks for no life." : null;
    }

    @Override
    Verdict of(int index, BranchInput branch, PartStress stress, String corner) {
        LifeEstimate life = stress.life();
        if (LifeRule.of(branch.technology()).isEmpty()) {
            return form.notModelled(life.reason());
        }
        double factor = stress.rule().lifeFactor();
        double limit = rail.life().hours() * factor;
        if (!life.modelled()) {
            return form.unknown(limit, corner, "The life of " + name(branch) + " is not known: " + life.reason());
        }
        String sentence = name(branch) + " lasts " + Words.hours(life.hours()) + " by the " + life.rule().label() + " with a core of "
                + Words.celsius(stress.heat().coreC()) + Corner.at(corner) + ", " + Words.hours(limit) + " asked"
                + (factor == 1 ? "." : ", which is " + Words.quantity(factor, "") + " times the rail's life.") + unmodelled();
        return form.judged(limit, life.hours(), corner, index, sentence, new Explanation(
                "The datasheet promises " + Words.hours(branch.ratings().life().hours()) + " at "
                        + Words.celsius(branch.ratings().life().temperatureC()) + "; " + stress.heat().sentence(),
                String.join(" ", life.notes()),
                "Cooler surroundings, less ripple current in each part, or a part of longer endurance."), null);
    }

    private String unmodelled() {
        return notModelled.isEmpty() ? "" : " Not modelled for "
                + notModelled.stream().map(Technology::label).collect(Collectors.joining(" and ")) + ".";
    }
}
