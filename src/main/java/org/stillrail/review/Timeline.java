package org.stillrail.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.stillrail.bank.Bank;
import org.stillrail.bank.Banks;
import org.stillrail.document.Revision;

/** What happened to a bank, in lines that can be read one after the other. */
@Component
class Timeline {

    private final Banks banks;
    private final ReviewRows rows;
    private final Snapshots snapshots;

    Timeline(Banks banks, ReviewRows rows, Snapshots snapshots) {
        this.banks = banks;
        this.rows = rows;
        this.snapshots = snapshots;
    }

    /** Of all revisions, oldest first. */
    List<TimelineEntry> of(Bank bank) {
        Map<UUID, Integer> numbers = banks.history(bank.id()).stream().collect(Collectors.toMap(Revision::id, Revision::number));
        List<Signature> signatures = snapshots.signaturesOfBank(bank.id());
        List<TimelineEntry> entries = new ArrayList<>();
        for (StepTaken step : rows.stepsOfBank(bank.id())) {
            int revision = numbers.get(step.revisionId());
            entries.add(new TimelineEntry(step.at(), revision, sentence(step, revision, signatures), step.remark(), null, null));
        }
        for (Comment comment : rows.commentsOfBank(bank.id())) {
            int revision = numbers.get(comment.revisionId());
            entries.add(new TimelineEntry(comment.at(), revision, comment.person() + " said of "
                    + (comment.about() == null ? "" : comment.about() + " in ") + "revision " + revision + ":", comment.remark(), comment.anchor(), place(bank, revision, comment.subject())));
        }
        entries.sort(Comparator.comparing(TimelineEntry::at));
        return entries;
    }

    private static String sentence(StepTaken step, int revision, List<Signature> signatures) {
        String what = "revision " + revision;
        return switch (step.step()) {
            case SUBMITTED -> step.person() + " submitted " + what + " for review.";
            case RETURNED -> step.person() + " returned " + what + ".";
            case SIGNED -> step.person() + " signed " + what + "; it waits for the second signature" + ending(step, signatures);
            case APPROVED -> step.person() + " approved and signed " + what + ending(step, signatures);
            case SUPERSEDED -> "With that, " + what + " is superseded.";
            case RECALLED -> step.person() + " recalled " + what + ".";
        };
    }

    /** A branch stands at its place in the revision that the comment is on; on the page of another one it may be a different branch. */
    private static String place(Bank shown, int revision, CommentSubject subject) {
        if (subject.anchor().isEmpty()) {
            return null;
        }
        return (revision == shown.revision().number() ? "" : "/banks/" + shown.id() + "/revisions/" + revision) + "#" + subject.anchor();
    }

    /** The meaning of the signature that was given at the same instant as the step, which ends with its own full stop. */
    private static String ending(StepTaken step, List<Signature> signatures) {
        return signatures.stream().filter(signature -> signature.signerId().equals(step.personId()) && signature.at().isEqual(step.at()))
                .findFirst().map(signature -> ": '" + signature.meaning() + "'").orElse(".");
    }
}
