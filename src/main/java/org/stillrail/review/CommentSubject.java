package org.stillrail.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillrail.bank.BankDocument;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Requirement;

/**
 * What a comment is tied to: a verdict, a branch of one revision, or the revision as a whole.
 *
 * @param requirement of the verdict, else null
 * @param branch      its place in the revision's document, from 0, else null; names are no tie, as two branches may share one
 */
record CommentSubject(Requirement requirement, Integer branch) {

    static final CommentSubject WHOLE = new CommentSubject(null, null);

    /** The whole, then the branches, then the verdicts that the rail asks for; none of these where {@code evaluation} is null. */
    static List<CommentSubject> of(BankDocument document, Evaluation evaluation) {
        List<CommentSubject> subjects = new ArrayList<>();
        subjects.add(WHOLE);
        for (int i = 0; i < document.branches().size(); i++) {
            subjects.add(new CommentSubject(null, i));
        }
        if (evaluation != null) {
            evaluation.verdicts().stream().filter(verdict -> verdict.outcome() != Outcome.NOT_ASKED)
                    .forEach(verdict -> subjects.add(new CommentSubject(verdict.requirement(), null)));
        }
        return subjects;
    }

    /** The id of its place on the bank page, which is also how forms name it; empty for the whole. */
    String anchor() {
        return requirement != null ? "verdict-" + requirement.id() : branch != null ? "card-" + branch : "";
    }

    String words(BankDocument document) {
        return requirement != null ? "the verdict on " + requirement.label().toLowerCase(Locale.ROOT)
                : branch != null ? "branch " + (branch + 1) + " '" + document.branches().get(branch).label() + "'"
                : "the revision as a whole";
    }
}
