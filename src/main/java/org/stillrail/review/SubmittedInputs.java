package org.stillrail.review;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.stillrail.bank.Bank;
import org.stillrail.bank.FrozenInputs;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.evaluation.EvaluationInput;

/** Reads the input of an evaluation out of the snapshot that a submission made. */
@Component
class SubmittedInputs implements FrozenInputs {

    private final Snapshots snapshots;

    SubmittedInputs(Snapshots snapshots) {
        this.snapshots = snapshots;
    }

    @Override
    public Optional<EvaluationInput> of(Bank bank) {
        return snapshots.ofRevision(bank.revision().id()).flatMap(SubmittedInputs::input);
    }

    private static Optional<EvaluationInput> input(Snapshot snapshot) {
        try {
            return Optional.of(CanonicalJson.read(new String(snapshot.content().copy(), StandardCharsets.UTF_8), SnapshotDocument.class).input());
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }
}
