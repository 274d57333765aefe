package org.stillrail.review;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.stillrail.bank.Bank;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.evaluation.FigureComparison;

/** Reads the review of a bank revision for rooms above. */
@Component
public class ReviewRecords {

    private final Snapshots snapshots;
    private final ReviewRows rows;
    private final Timeline timeline;

    ReviewRecords(Snapshots snapshots, ReviewRows rows, Timeline timeline) {
        this.snapshots = snapshots;
        this.rows = rows;
        this.timeline = timeline;
    }

    public ReviewRecord of(Bank bank) {
        Optional<Snapshot> snapshot = snapshots.ofRevision(bank.revision().id());
        List<ReviewRecord.Signed> signatures = snapshot.map(snapshots::signed).orElse(List.of());
        return new ReviewRecord(
                snapshot.map(ReviewRecords::frozen).orElse(null),
                signatures,
                rows.concessions(bank.revision().id()).stream().map(concession -> new ReviewRecord.Accepted(
                        concession.requirement().label(), concession.reason(), concession.owner(), concession.endsOn())).toList(),
                timeline.of(bank).stream().map(entry -> new ReviewRecord.Event(entry.at(), entry.sentence(), entry.remark())).toList());
    }

    /** Whether every signature under a revision is whole and names its snapshot as it is. */
    public boolean signaturesHold(UUID revisionId) {
        return snapshots.ofRevision(revisionId).map(snapshots::signed).orElse(List.of()).stream().allMatch(ReviewRecord.Signed::holds);
    }

    private static ReviewRecord.Frozen frozen(Snapshot snapshot) {
        try {
            SnapshotDocument document = CanonicalJson.read(new String(snapshot.content().copy(), StandardCharsets.UTF_8), SnapshotDocument.class);
            Recomputation again = Recomputation.of(document);
            return new ReviewRecord.Frozen(snapshot.id(), snapshot.sha256(), snapshot.madeAt(), snapshot.intact(), document.input(),
                    again.differences().stream().map(FigureComparison.Difference::sentence).toList(), again.refused());
        } catch (IllegalArgumentException e) {
            return new ReviewRecord.Frozen(snapshot.id(), snapshot.sha256(), snapshot.madeAt(), snapshot.intact(), null, List.of(), e.getMessage());
        }
    }
}
