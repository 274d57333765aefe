package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;
import org.stillrail.electrical.stress.PartStress;
import org.stillrail.electrical.stress.RippleStress;

/**
 * The ripple current of each part, its harmonics weighed by frequency, against the team's share of its rating at the corner's ambient.
 * Bulk parts, which are the polar ones, need a rating; others are judged by it where they have one, else by their temperature alone.
 */
final class RippleCurrentJudge extends StressJudge {

    RippleCurrentJudge(EvaluationInput input) {
        super(input, Requirement.RIPPLE_CURRENT, Bound.AT_MOST, "A", null);
    }

    @Override
    String notAsked() {
        return null;
    }

    @Override
    Verdict of(int index, BranchInput branch, PartStress stress, String corner) {
        RippleStress ripple = stress.ripple();
        RatingInput rating = branch.ratings();
        if (ripple == null) {
            return branch.technology().polar()
                    ? form.unknown(null, corner, name(branch) + " has no ripple current rating; it stands in the datasheet of a bulk part")
                    : form.notAsked("No part has a ripple current rating or needs one; their temperature is judged.");
        }
        double ambientC = stress.ambientC();
        if (rating.ripple().overTemperature() == null && rating.rippleAtC() != null && ambientC > rating.rippleAtC()) {
            return form.unknown(null, corner, name(branch) + " is rated for ripple current at " + Words.celsius(rating.rippleAtC())
                    + "; what it may carry at " + Words.celsius(ambientC) + " is not known");
        }
        double share = stress.rule().rippleShare();
        String sentence = name(branch) + " carries " + Words.beside(ripple.equivalentA(), ripple.allowedA(), "A")
                + " of ripple current in each part, weighed by frequency, " + Words.quantity(ripple.allowedA(), "A") + " allowed,"
                + (share == 1 ? " its rating at " : " " + Words.percent(share) + " of its rating at ") + Words.celsius(ambientC)
                + Corner.at(corner) + ".";
        return form.judged(ripple.allowedA(), ripple.equivalentA(), corner, index, sentence, new Explanation(
                "The inductor's ripple current divides among the branches; " + Words.quantity(ripple.rmsA(), "A")
                        + " rms flow through each part of this one.",
                name(branch) + " is " + branch.technology().label() + " rated for " + Words.quantity(ripple.ratedA(), "A") + " there."
                        + (ripple.notes().isEmpty() ? "" : " " + String.join(" ", ripple.notes())),
                "More parts side by side, ceramics that take the current over, or a part rated for more. The rule's source: "
                        + stress.rule().source() + "."), null);
    }
}
