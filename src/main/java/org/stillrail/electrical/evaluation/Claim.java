package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Verdict;

/**
 * What is said of a bank in one breath.
 *
 * @param fits     every limit that is asked and modelled is met, and there is one
 * @param met      how many are met
 * @param asked    how many are asked and modelled
 * @param corners  at how many corners it was looked
 * @param corner   of the worst verdict, null where no corner matters
 * @param sentence fit or not, how many limits are met, and what is wrong, or nearest to it, in plain words
 */
public record Claim(boolean fits, int met, int asked, int corners, String corner, String sentence) {

    /** @param verdicts worst first */
    static Claim of(List<Verdict> verdicts, int corners) {
        List<Verdict> judged = verdicts.stream()
                .filter(verdict -> verdict.outcome().judged()).toList();
        int met = (int) judged.stream().filter(Verdict::met).count();
        int asked = judged.size();
        boolean unmodelled = verdicts.stream().anyMatch(verdict -> verdict.outcome() == Outcome.NOT_MODELLED);
        if (asked == 0) {
            return new Claim(false, 0, 0, corners, null, "Nothing that can be judged is asked of this bank.");
        }
        Verdict worst = judged.get(0);
        boolean fits = met == asked;
        String where = corners == 1 ? "" : " at the worst of " + corners + " corners";
        String sentence = fits
                ? "The bank fits" + (unmodelled ? " as far as it is modelled" : "") + ": " + limits(asked) + " met" + where + ". " + nearest(worst)
                : "The bank does not fit: " + met + " of " + limits(asked) + " met" + where + ". " + wrong(worst);
        return new Claim(fits, met, asked, corners, worst.corner(), sentence);
    }

    private static String limits(int count) {
        return count == 1 ? "1 limit" : count + " limits";
    }

    private static String nearest(Verdict worst) {
        return worst.margin() == null ? worst.sentence()
                : worst.requirement().label() + " comes nearest to its limit, with " + Words.percent(worst.margin()) + " to spare: " + worst.sentence();
    }

    private static String wrong(Verdict worst) {
        return worst.outcome() == Outcome.UNKNOWN ? worst.requirement().label() + " is unknown: " + worst.sentence() : worst.sentence();
    }
}
