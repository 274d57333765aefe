package org.stillrail.review;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.audit.AuditChain;
import org.stillrail.audit.AuditLines;
import org.stillrail.document.CanonicalJson;

/**
 * Verifies the chain of the record, the lines that came from other installations, and every snapshot with its signatures; on
 * request works every snapshot out again.
 */
@Component
class InstallationCheck {

    private final AuditChain chain;
    private final Snapshots snapshots;
    private final JdbcClient jdbc;
    private final AuditLines lines;

    InstallationCheck(AuditChain chain, AuditLines lines, Snapshots snapshots, JdbcClient jdbc) {
        this.lines = lines;
        this.chain = chain;
        this.snapshots = snapshots;
        this.jdbc = jdbc;
    }

    /**
     * What a check found.
     *
     * @param originLines of the records of other installations
     * @param faults      of those lines, of snapshots and signatures, a sentence each
     */
    record Findings(AuditChain.Check chain, int originLines, int snapshots, int signatures, int recomputed, List<String> faults) {

        public boolean sound() {
            return chain.sound() && faults.isEmpty();
        }
    }

    /** @param recompute takes about a second for each snapshot */
    Findings run(boolean recompute) {
        List<String> faults = new ArrayList<>(lines.originFaults());
        List<UUID> ids = jdbc.sql("select id from review_snapshot order by made_at, id").query(UUID.class).list();
        int signatures = 0;
        for (UUID id : ids) {
            Snapshot snapshot = snapshots.find(id).orElseThrow();
            signatures += check(snapshot, faults);
            if (recompute) {
                recompute(snapshot, faults);
            }
        }
        // An approval always comes with a signature; one without was written past the application.
        jdbc.sql("""
                        select r.id from bank_revision_state s join bank_revision r on r.id = s.revision_id where s.state = 'APPROVED'
                        and not exists (select 1 from review_signature g join review_snapshot x on x.id = g.snapshot_id where x.revision_id = r.id)""")
                .query(UUID.class).list()
                .forEach(id -> faults.add("Bank revision " + id + " is approved without a signature."));
        return new Findings(chain.verify(), lines.originLines(), ids.size(), signatures, recompute ? ids.size() : 0, List.copyOf(faults));
    }

    /** In words, for one snapshot; empty where it gives what was stored. */
    List<String> recompute(UUID snapshotId) {
        List<String> faults = new ArrayList<>();
        Snapshot snapshot = snapshots.find(snapshotId).orElse(null);
        if (snapshot == null) {
            return List.of("There is no snapshot " + snapshotId + ".");
        }
        check(snapshot, faults);
        recompute(snapshot, faults);
        return faults;
    }

    private int check(Snapshot snapshot, List<String> faults) {
        if (!snapshot.intact()) {
            faults.add("Snapshot " + snapshot.id() + " does not give its SHA-256.");
        }
        List<Signature> signatures = snapshots.signatures(snapshot.id());
        for (Signature signature : signatures) {
            if (!signature.intact() || !signature.isFor(snapshot)) {
                faults.add("The signature of " + signature.signer() + " under snapshot " + snapshot.id() + " does not hold.");
            }
        }
        return signatures.size();
    }

    private static void recompute(Snapshot snapshot, List<String> faults) {
        try {
            Recomputation again = Recomputation.of(
                    CanonicalJson.read(new String(snapshot.content().copy(), StandardCharsets.UTF_8), SnapshotDocument.class));
            if (again.refused() != null) {
                faults.add("Snapshot " + snapshot.id() + " cannot be worked out again: " + again.refused() + ".");
            }
            again.differences().forEach(difference -> faults.add("Snapshot " + snapshot.id() + ": " + difference.sentence()));
        } catch (IllegalArgumentException e) {
            faults.add("Snapshot " + snapshot.id() + " cannot be read: " + e.getMessage());
        }
    }
}
