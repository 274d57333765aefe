package org.stillrail.electrical.evaluation;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;

/**
 * A small change of the bank and what it does to the verdicts, each at the corner that sets it now: quick enough to be
 * worked out for every branch. Another corner may take over; only the evaluation of the changed bank looks at all.
 *
 * @param branch   index of the changed branch
 * @param count    parts in that branch after the change; 0 where the branch falls away
 * @param sentence the change in words
 * @param changes  all verdicts, in the order of {@link Requirement}
 */
public record Remedy(int branch, int countBefore, int count, String sentence, List<VerdictChange> changes) {

    public Remedy {
        changes = List.copyOf(changes);
    }

    /** Verdicts that it turns, for better or worse. */
    public List<VerdictChange> turned() {
        return changes.stream().filter(VerdictChange::turns).toList();
    }

    public List<VerdictChange> mended() {
        return changes.stream().filter(VerdictChange::mends).toList();
    }

    public List<VerdictChange> broken() {
        return changes.stream().filter(VerdictChange::breaks).toList();
    }

    /** One part more and one fewer in each branch, in the bank's order. */
    static List<Remedy> of(Judgement now) {
        EvaluationInput input = now.input();
        return IntStream.range(0, 2 * input.branches().size())
                .filter(i -> i % 2 == 0 || input.branches().get(i / 2).count() > 1 || input.branches().size() > 1)
                .parallel()
                .mapToObj(i -> of(now, i / 2, input.branches().get(i / 2).count() + (i % 2 == 0 ? 1 : -1)))
                .toList();
    }

    private static Remedy of(Judgement now, int branch, int count) {
        BranchInput changed = now.input().branches().get(branch);
        List<VerdictChange> changes = now.withCount(branch, count).stream()
                .map(after -> VerdictChange.of(now.on(after.requirement()), after)).toList();
        String name = "'" + changed.label() + "'";
        String sentence = count == 0 ? "Without " + name
                : (count > changed.count() ? "One more " : "One fewer ") + name + " (" + count + " in all)";
        return new Remedy(branch, changed.count(), count, sentence, changes);
    }

    /** The verdict with its third sentence made certain by what the remedies do to it, where it is not met. */
    static Verdict advise(Verdict verdict, List<Remedy> remedies) {
        if (!verdict.outcome().needsConcession() || verdict.margin() == null) {
            return verdict;
        }
        Remedy best = remedies.stream()
                .filter(remedy -> remedy.change(verdict.requirement()).marginAfter() != null)
                .max(Comparator.comparing(remedy -> remedy.change(verdict.requirement()).marginAfter()))
                .orElse(null);
        if (best == null || best.change(verdict.requirement()).marginAfter() <= verdict.margin()) {
            return verdict;
        }
        VerdictChange change = best.change(verdict.requirement());
        String effect = change.mends() ? " meets it" : " brings it to " + Words.percent(change.marginAfter()) + " of margin, from "
                + Words.percent(verdict.margin());
        return verdict.withWhatWouldChange(best.sentence() + effect + ". " + verdict.explanation().whatWouldChange());
    }

    private VerdictChange change(Requirement requirement) {
        return changes.stream().filter(change -> change.requirement() == requirement).findFirst().orElseThrow();
    }
}
