package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.requirement.Verdict;

/** Judges what each branch bears for itself; the worst branch gives the verdict, the first of equals. */
interface BranchJudge extends Judge {

    int branches();

    Verdict at(CornerFigures figures, int branch);

    @Override
    default Verdict at(CornerFigures figures) {
        Verdict worst = at(figures, 0);
        for (int k = 1; k < branches(); k++) {
            Verdict verdict = at(figures, k);
            if (Verdict.WORST_FIRST.compare(verdict, worst) < 0) {
                worst = verdict;
            }
        }
        return worst;
    }
}
