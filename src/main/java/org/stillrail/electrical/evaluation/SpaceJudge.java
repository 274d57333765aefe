package org.stillrail.electrical.evaluation;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Space;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;

/**
 * Height of the tallest part, area of all places, fitted or not, and cost of all parts. Where a part does not tell, the
 * verdict is unknown, unless the others alone exceed the limit.
 *
 * @param limit null where not asked
 * @param part  a branch's figure for one part, null where not known
 * @param sum   whether the parts add up; else the largest counts
 */
record SpaceJudge(Requirement requirement, String unit, Space space, Double limit, List<BranchInput> branches, Function<BranchInput, Double> part,
        boolean sum) {

    static List<Verdict> all(EvaluationInput input) {
        Space space = input.rail().space();
        List<BranchInput> branches = input.branches();
        Double cost = space == null || space.cost() == null ? null : (Double) space.cost().doubleValue();
        return List.of(
                new SpaceJudge(Requirement.HEIGHT, "m", space, space == null ? null : space.heightM(), branches, BranchInput::heightM, false).verdict(),
                new SpaceJudge(Requirement.AREA, "m²", space, space == null ? null : space.areaM2(), branches, BranchInput::areaM2, true).verdict(),
                new SpaceJudge(Requirement.COST, input.settings().currencyUnit(), space, cost, branches,
                        branch -> branch.cost() == null ? null : (Double) branch.cost().doubleValue(), true).verdict());
    }

    private Verdict verdict() {
        VerdictForm form = new VerdictForm(requirement, Bound.AT_MOST, unit, space == null ? null : space.citation(),
                List.of(ExplainingSeries.BRANCH_CARDS));
        if (limit == null) {
            return form.notAsked();
        }
        double total = 0;
        double most = -1;
        int worst = 0;
        String silent = null;
        for (int k = 0; k < branches.size(); k++) {
            Double each = part.apply(branches.get(k));
            if (each == null) {
                silent = branches.get(k).label();
                continue;
            }
            double branch = sum ? each * (requirement == Requirement.AREA ? branches.get(k).places() : branches.get(k).count()) : each;
            total = sum ? total + branch : Math.max(total, branch);
            if (branch > most) {
                most = branch;
                worst = k;
            }
        }
        if (silent != null && total <= limit) {
            return form.unknown(limit, null, "The " + requirement.label().toLowerCase(Locale.ROOT) + " of '" + silent + "' is not known");
        }
        String name = "'" + branches.get(worst).label() + "'";
        int empty = requirement == Requirement.AREA ? branches.stream().mapToInt(branch -> branch.places() - branch.count()).sum() : 0;
        String places = empty == 0 ? "" : empty == 1 ? ", with one empty place" : ", with " + empty + " empty places";
        String sentence = requirement.label() + " is " + words(total) + places + (silent == null ? "" : " at least") + ", " + words(limit) + " allowed; "
                + name + (sum ? " takes most of it." : " is the tallest.");
        return form.judged(limit, total, null, worst, sentence, new Explanation(
                sum ? "All parts together take " + words(total) + "." : "The tallest part stands " + words(total) + " over the board.",
                name + (sum ? " takes " + words(most) + " of it." : " is the tallest."),
                sum ? "Fewer or smaller parts help." : "A flatter part helps."), null);
    }

    private String words(double value) {
        return requirement == Requirement.AREA ? Words.quantity(value * 1e6, "") + " mm²" : Words.quantity(value, unit);
    }
}
