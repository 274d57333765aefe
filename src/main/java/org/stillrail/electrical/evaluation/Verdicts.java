package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;

/**
 * All verdicts on a bank, each the worst over the corners.
 *
 * @param figures  in the order of the corners
 * @param verdicts worst first
 */
record Verdicts(List<CornerFigures> figures, List<Verdict> verdicts) {

    static Verdicts of(EvaluationInput input, List<Corner> corners) {
        RailFigures rail = input.rail();
        boolean looped = rail.converter().control() != null && rail.converter().topology() == Topology.BUCK;
        Tried<Compensation> compensation = looped ? Compensation.of(input) : null;
        List<CornerFigures> figures = corners.stream().map(corner -> CornerFigures.of(input, corner, compensation)).toList();
        List<Verdict> verdicts = new ArrayList<>();
        for (Judge judge : judges(input)) {
            verdicts.add(worst(judge, figures));
        }
        verdicts.addAll(SpaceJudge.all(input));
        verdicts.sort(Verdict.WORST_FIRST);
        return new Verdicts(figures, List.copyOf(verdicts));
    }

    private static List<Judge> judges(EvaluationInput input) {
        RailFigures rail = input.rail();
        return List.of(new RippleJudge(rail), new QuietBandJudge(rail), new DampingJudge(rail, input.settings()), new BulkChargeJudge(rail),
                new DeviationJudge(rail), new WindowJudge(rail), new VoltageRatingJudge(input), new EsrWindowJudge(rail));
    }

    /** The first of equals, so the nominal corner where the corner makes no difference. */
    private static Verdict worst(Judge judge, List<CornerFigures> figures) {
        Verdict worst = null;
        for (CornerFigures each : figures) {
            Verdict verdict = judge.at(each);
            if (worst == null || Verdict.WORST_FIRST.compare(verdict, worst) < 0) {
                worst = verdict;
            }
        }
        return worst;
    }
}
