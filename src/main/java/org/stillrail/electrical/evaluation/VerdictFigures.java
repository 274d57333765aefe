package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;

/** A verdict's numbers and its sentence, for keeping. Null where there is none. */
public record VerdictFigures(
        Requirement requirement, Outcome outcome, Double limit, Double value, String unit, Double margin, String corner, String sentence) {

    static VerdictFigures of(Verdict verdict) {
        return new VerdictFigures(verdict.requirement(), verdict.outcome(), verdict.limit(), verdict.value(), verdict.unit(), verdict.margin(),
                verdict.corner(), verdict.sentence());
    }
}
