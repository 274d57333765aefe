package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;
import org.stillrail.electrical.stress.PartStress;
import org.stillrail.electrical.stress.SelfHeating;

/** Ambient and own warming of each part against what the team's rule leaves of its rated temperature. */
final class TemperatureJudge extends StressJudge {

    TemperatureJudge(EvaluationInput input) {
        super(input, Requirement.TEMPERATURE, Bound.AT_MOST, "degC", input.rail().ambient() == null ? null : input.rail().ambient().citation());
    }

    @Override
    String notAsked() {
        return rail.ambient() == null ? "The rail states no ambient temperature." : null;
    }

    @Override
    Verdict of(int index, BranchInput branch, PartStress stress, String corner) {
        Double allowedC = stress.allowedC();
        if (allowedC == null) {
            return form.unknown(null, corner, "The highest temperature of " + name(branch) + " is not stated");
        }
        SelfHeating heat = stress.heat();
        if (heat == null) {
            return form.unknown(allowedC, corner, "No thermal resistance of " + name(branch)
                    + " is known, and without the size of its case none can be estimated");
        }
        Explanation explanation = new Explanation(heat.sentence(),
                name(branch) + " is " + branch.technology().label() + ", rated up to " + rated(branch) + ".",
                (heat.estimated() ? "The thermal resistance is " + branch.ratings().thermal().source() + "; a measured one would tell more. "
                        : "") + "Less current in each part, less ESR, or a part for more heat. The rule's source: " + stress.rule().source() + ".");
        if (heat.runsAway()) {
            return form.notMet(allowedC, corner, index, name(branch) + " finds no steady temperature" + Corner.at(corner) + ": its losses grow faster"
                    + " than it can give them off.", explanation, null);
        }
        String sentence = "The core of " + name(branch) + " comes to " + Words.celsius(heat.coreC()) + ", "
                + Words.kelvin(heat.riseK()) + " above the air" + (heat.estimated() ? " (estimated)" : "") + ", "
                + Words.celsius(allowedC) + " allowed," + Corner.at(corner) + ".";
        return form.judged(allowedC, heat.coreC(), corner, index, sentence, explanation, null);
    }

    private static String rated(BranchInput branch) {
        Double rated = branch.ratings().ratedTemperatureC();
        return rated == null ? "no stated temperature" : Words.celsius(rated);
    }
}
