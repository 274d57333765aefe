package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.Citation;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.stress.PartStress;

/** What the judges of ripple current, temperature and life have in common: they need to know what a part goes through. */
abstract class StressJudge implements BranchJudge {

    final RailFigures rail;
    final VerdictForm form;
    private final List<BranchInput> branches;

    StressJudge(EvaluationInput input, Requirement requirement, Bound bound, String unit, Citation citation) {
        this.rail = input.rail();
        this.branches = input.branches();
        this.form = new VerdictForm(requirement, bound, unit, citation, List.of(ExplainingSeries.STRESS_TABLE));
    }

    /** @return null where the rail asks, else why not */
    abstract String notAsked();

    abstract Verdict of(int index, BranchInput branch, PartStress stress, String corner);

    @Override
    public int branches() {
        return branches.size();
    }

    @Override
    public Verdict at(CornerFigures figures, int index) {
        if (notAsked() != null) {
            return form.notAsked(notAsked());
        }
        if (figures.stress() == null) {
            return form.notModelled("The ripple current is not modelled: " + Words.WITHOUT_TURNS + ".");
        }
        String corner = figures.corner().name();
        if (!figures.stress().answered()) {
            return form.unknown(null, corner, figures.stress().refusal());
        }
        PartStress stress = figures.stress().value().get(index);
        BranchInput branch = branches.get(index);
        return stress == null ? form.unknown(null, corner, name(branch) + " has no technology, so nothing is known of what it bears")
                : of(index, branch, stress, corner);
    }

    static String name(BranchInput branch) {
        return "'" + branch.label() + "'";
    }
}
