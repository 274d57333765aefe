package org.stillrail.review;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.evaluation.FigureComparison;

/**
 * All that a review holds of one bank revision, for rooms that print it.
 *
 * @param snapshot null before submission
 * @param history  of the whole bank, oldest first
 */
public record ReviewRecord(Frozen snapshot, List<Signed> signatures, List<Accepted> concessions, List<Event> history) {

    /**
     * What was submitted.
     *
     * @param intact      whether the stored bytes still give the SHA-256
     * @param input       of the evaluation, as it was frozen; null where the bytes cannot be read
     * @param differences of the stored figures to those worked out again today, beyond {@link FigureComparison#TOLERANCE}
     * @param refused     why they cannot be worked out again, or null
     */
    public record Frozen(
            UUID id, String sha256, OffsetDateTime madeAt, boolean intact, EvaluationInput input, List<String> differences, String refused) {
    }

    /**
     * A signature as it is shown wherever the record is.
     *
     * @param snapshotSha256 of the bytes that it was given for
     * @param holds          whether the signature is as it was given, and for the bytes that are stored
     */
    public record Signed(String name, OffsetDateTime at, String meaning, String snapshotSha256, boolean holds) {
    }

    public record Accepted(String requirement, String reason, String owner, LocalDate endsOn) {
    }

    /** @param remark or null */
    public record Event(OffsetDateTime at, String sentence, String remark) {
    }
}
