package org.stillrail.review;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.stillrail.bank.Bank;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.web.Form;

/**
 * The review of one revision as its page shows it to one person.
 *
 * @param timeline    of the whole bank, oldest first
 * @param concessions of this revision
 * @param snapshotId  null before submission
 * @param sha256      of the snapshot, which the form for signing carries along
 * @param signatures  under this revision
 * @param lastSignature whether the next signature approves
 * @param notVetted   its parts that are not vetted and how far each may be relied on, a phrase each
 * @param submission  null where the person cannot submit this revision
 * @param subjects    what a comment may be tied to, the whole first
 * @param form        what was typed, or empty
 */
record ReviewView(
        Bank bank,
        List<TimelineEntry> timeline,
        List<Concession> concessions,
        UUID snapshotId,
        String sha256,
        List<ReviewRecord.Signed> signatures,
        boolean lastSignature,
        List<String> notVetted,
        Submission submission,
        boolean mayComment,
        Offer approve,
        Offer giveBack,
        Offer recall,
        String submitRefusal,
        String meaning,
        List<Subject> subjects,
        Form form) {

    /**
     * What a submission asks for.
     *
     * @param toConcede verdicts that are not met or unknown
     * @param owners    names of the project's members by id
     * @param refused   why the physics gives no verdicts, or null
     */
    record Submission(List<Verdict> toConcede, Map<String, String> owners, String refused) {

        public String field(Verdict verdict, String part) {
            return SubmissionForm.field(verdict.requirement(), ConcessionRules.Part.valueOf(part));
        }
    }

    /**
     * What a comment may be tied to.
     *
     * @param anchor id of its place on the page, empty for the whole
     * @param said   how many comments on this revision are tied to it
     * @param first  id of the first of them, or null
     */
    record Subject(String anchor, String words, long said, String first) {
    }

    /** The choices of the form for a comment, words by anchor. */
    public Map<String, String> choices() {
        Map<String, String> choices = new LinkedHashMap<>();
        subjects.forEach(subject -> choices.put(subject.anchor(), subject.words()));
        return choices;
    }

    /**
     * Whether a step is offered.
     *
     * @param refusal why it is not, where that is worth saying, else null
     */
    record Offer(boolean open, String refusal) {
    }
}
