package org.stillrail.electrical.evaluation;

import java.util.function.Function;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.stress.PartStress;

/**
 * What the parts of one branch bear, each verdict the worst of the corners and of its alternates for this branch alone. Figures are there also
 * where the rail asks nothing.
 *
 * @param hottest       at the corner of the warmest core; null where no warmth is known
 * @param hottestCorner null likewise
 */
public record BranchStress(
        Verdict voltage, Verdict reverseVoltage, Verdict rippleCurrent, Verdict temperature, Verdict life, PartStress hottest,
        String hottestCorner) {

    static BranchStress of(Judgement judged, int branch) {
        CornerFigures hottest = hottest(judged, branch);
        return new BranchStress(
                worst(judged, VoltageRatingJudge::new, branch),
                worst(judged, ReverseVoltageJudge::new, branch),
                worst(judged, RippleCurrentJudge::new, branch),
                worst(judged, TemperatureJudge::new, branch),
                worst(judged, LifeJudge::new, branch),
                hottest == null ? null : hottest.stressOf(branch),
                hottest == null ? null : hottest.corner().name());
    }

    private static Verdict worst(Judgement judged, Function<EvaluationInput, BranchJudge> judges, int branch) {
        Verdict worst = null;
        for (Verdicts fitted : judged.fittings()) {
            BranchJudge judge = judges.apply(fitted.fitting().input());
            Verdict verdict = Verdicts.worst(figures -> judge.at(figures, branch), fitted.figures());
            if (worst == null || Verdict.WORST_FIRST.compare(verdict, worst) < 0) {
                worst = verdict;
            }
        }
        return worst;
    }

    /** A part that runs away is the hottest of all. */
    private static CornerFigures hottest(Judgement judged, int branch) {
        CornerFigures hottest = null;
        for (CornerFigures each : judged.figures()) {
            if (coreC(each, branch) > (hottest == null ? Double.NEGATIVE_INFINITY : coreC(hottest, branch))) {
                hottest = each;
            }
        }
        return hottest;
    }

    private static double coreC(CornerFigures figures, int branch) {
        PartStress stress = figures.stressOf(branch);
        if (stress == null || stress.heat() == null) {
            return Double.NEGATIVE_INFINITY;
        }
        return stress.heat().runsAway() ? Double.POSITIVE_INFINITY : stress.heat().coreC();
    }
}
