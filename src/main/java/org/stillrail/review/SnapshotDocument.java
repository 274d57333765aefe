package org.stillrail.review;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.stillrail.electrical.evaluation.EvaluationFigures;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.requirement.Requirement;

/**
 * All that a review judges and a signature stands for, as one value: what the bank is and rests on, what was conceded, the
 * frozen input of its evaluation and the result. Its canonical JSON is the snapshot.
 *
 * @param format of this document, raised when a field changes its meaning
 */
record SnapshotDocument(
        int format,
        Submitted submitted,
        BankIdentity bank,
        RailIdentity rail,
        List<PartIdentity> parts,
        List<Conceded> concessions,
        EvaluationInput input,
        EvaluationFigures result) {

    static final int FORMAT = 1;

    SnapshotDocument {
        parts = List.copyOf(parts);
        concessions = List.copyOf(concessions);
    }

    /** @param remark for the reviewer, or null */
    record Submitted(UUID personId, String person, Instant at, String remark) {
    }

    record BankIdentity(UUID id, String name, UUID revisionId, int revision, String sha256, String author, Instant madeAt) {
    }

    record RailIdentity(UUID projectId, String project, UUID id, String name, UUID revisionId, int revision, String sha256) {
    }

    /** @param sweeps that the part's model may rest on, the chosen one first; empty for a datasheet's figures */
    record PartIdentity(UUID id, String partNumber, UUID revisionId, int revision, String sha256, List<SweepIdentity> sweeps) {

        PartIdentity {
            sweeps = List.copyOf(sweeps);
        }
    }

    /**
     * @param sha256    of the sweep as it was read
     * @param rawSha256 of the file
     */
    record SweepIdentity(UUID id, String fileName, String sha256, String rawSha256) {
    }

    record Conceded(Requirement requirement, String reason, UUID ownerId, String owner, LocalDate endsOn) {

        static Conceded of(Concession concession) {
            return new Conceded(concession.requirement(), concession.reason(), concession.ownerId(), concession.owner(), concession.endsOn());
        }
    }
}
