package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;

/**
 * What a change of the bank does to one verdict. Values and margins are null where there are none.
 *
 * @param before with {@code valueBefore} and {@code marginBefore}, of the bank as it is
 */
public record VerdictChange(
        Requirement requirement, Outcome before, Outcome after, Double valueBefore, Double valueAfter, String unit, Double marginBefore,
        Double marginAfter) {

    static VerdictChange of(Verdict before, Verdict after) {
        return new VerdictChange(before.requirement(), before.outcome(), after.outcome(), before.value(), after.value(), after.unit(),
                before.margin(), after.margin());
    }

    /** From not met, or unknown, to met. */
    public boolean mends() {
        return before != Outcome.MET && after == Outcome.MET;
    }

    /** From met to anything else. */
    public boolean breaks() {
        return before == Outcome.MET && after != Outcome.MET;
    }

    public boolean turns() {
        return before != after;
    }
}
