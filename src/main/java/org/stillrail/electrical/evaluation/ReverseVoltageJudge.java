package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;
import org.stillrail.electrical.stress.PartStress;
import org.stillrail.electrical.stress.ReverseVoltage;

/**
 * How far the rail falls below its nominal voltage, by the accuracy of its reference, half the ripple and the load step, against the fall that
 * would reverse a polar part further than it bears. Switching on and off are not looked at.
 */
final class ReverseVoltageJudge implements BranchJudge {

    private final RailFigures rail;
    private final List<BranchInput> branches;
    private final VerdictForm form;

    ReverseVoltageJudge(EvaluationInput input) {
        this.rail = input.rail();
        this.branches = input.branches();
        this.form = new VerdictForm(Requirement.REVERSE_VOLTAGE, Bound.AT_MOST, "V", null, List.of(ExplainingSeries.BRANCH_CARDS));
    }

    @Override
    public int branches() {
        return branches.size();
    }

    @Override
    public Verdict at(CornerFigures figures, int index) {
        BranchInput branch = branches.get(index);
        String name = StressJudge.name(branch);
        String corner = figures.corner().name();
        if (branch.technology() == null) {
            return form.unknown(null, corner, name + " has no technology, so nobody can tell whether it is polar");
        }
        if (!branch.technology().polar()) {
            return form.notAsked("No part is polar.");
        }
        Verdict missing = missing(figures, corner);
        if (missing != null) {
            return missing;
        }
        double fall = VoltageRatingJudge.accuracyV(rail) + VoltageRatingJudge.ripplePeakToPeakV(figures, branch) / 2
                + (figures.steps() == null ? 0 : figures.steps().value().belowNominalV(rail.loadStep()));
        ReverseVoltage reverse = ReverseVoltage.of(branch.technology(), branch.ratedVoltageV(), branch.ratings().reverseV(),
                warmestC(figures, index), rail.nominalVoltageV() - fall);
        double limit = rail.nominalVoltageV() + reverse.allowedV();
        String sentence = "The rail falls by " + Words.beside(fall, limit, "V") + " at most below its nominal " + Words.quantity(rail.nominalVoltageV(), "V")
                + Corner.at(corner) + "; " + name + " would be reversed further than it bears from " + Words.quantity(limit, "V") + " on.";
        return form.judged(limit, fall, corner, index, sentence, new Explanation(
                "The accuracy of the reference, half the ripple and the load step pull the voltage down together.",
                name + " is " + branch.technology().label() + ", which is polar; it bears " + Words.quantity(reverse.allowedV(), "V") + " backwards ("
                        + reverse.source() + ").",
                "More capacitance or a faster loop. Switching on and off are not looked at: what pulls the rail below 0 V there needs a clamp."), null);
    }

    /** null where all is known. */
    private Verdict missing(CornerFigures figures, String corner) {
        boolean buck = rail.converter().topology() == Topology.BUCK;
        if (figures.ripplePeakToPeakV() == null || rail.loadStep() != null && !buck) {
            return form.notModelled("Ripple and load step of a " + rail.converter().topology().label() + " converter are not both modelled.");
        }
        if (!figures.ripplePeakToPeakV().answered()) {
            return form.unknown(null, corner, figures.ripplePeakToPeakV().refusal());
        }
        if (rail.loadStep() != null && figures.steps() == null) {
            return form.notAsked("Without a stated control the fall by the load step is not looked at.");
        }
        return rail.loadStep() == null || figures.steps().answered() ? null : form.unknown(null, corner, figures.steps().refusal());
    }

    private double warmestC(CornerFigures figures, int index) {
        PartStress stress = figures.stressOf(index);
        double ambientC = figures.corner().conditions().ambientC();
        return stress == null || stress.heat() == null || stress.heat().runsAway() ? ambientC : stress.heat().coreC();
    }
}
