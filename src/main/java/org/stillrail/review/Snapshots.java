package org.stillrail.review;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Stored snapshots and the signatures under them; neither is ever changed. */
@Repository
class Snapshots {

    private final JdbcClient jdbc;

    Snapshots(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void insert(Snapshot snapshot) {
        jdbc.sql("""
                        insert into review_snapshot (id, revision_id, content, sha256, method_version, made_at)
                        values (:id, :revisionId, :content, :sha256, :methodVersion, :madeAt)""")
                .param("id", snapshot.id())
                .param("revisionId", snapshot.revisionId())
                .param("content", snapshot.content().copy())
                .param("sha256", snapshot.sha256())
                .param("methodVersion", snapshot.methodVersion())
                .param("madeAt", snapshot.madeAt())
                .update();
    }

    Optional<Snapshot> find(UUID id) {
        return jdbc.sql("select * from review_snapshot where id = :id").param("id", id).query(Snapshots::snapshot).optional();
    }

    Optional<Snapshot> ofRevision(UUID revisionId) {
        return jdbc.sql("select * from review_snapshot where revision_id = :id").param("id", revisionId).query(Snapshots::snapshot).optional();
    }

    void insert(Signature signature) {
        jdbc.sql("""
                        insert into review_signature (id, snapshot_id, snapshot_sha256, signer_id, signer, signed_at, meaning, sha256)
                        values (:id, :snapshotId, :snapshotSha256, :signerId, :signer, :at, :meaning, :sha256)""")
                .param("id", signature.id())
                .param("snapshotId", signature.snapshotId())
                .param("snapshotSha256", signature.snapshotSha256())
                .param("signerId", signature.signerId())
                .param("signer", signature.signer())
                .param("at", signature.at())
                .param("meaning", signature.meaning())
                .param("sha256", signature.sha256())
                .update();
    }

    /** Oldest first. */
    List<Signature> signatures(UUID snapshotId) {
        return jdbc.sql("select * from review_signature where snapshot_id = :id order by signed_at").param("id", snapshotId)
                .query(Snapshots::signature)
                .list();
    }

    /** Under all revisions of a bank. */
    List<Signature> signaturesOfBank(UUID bankId) {
        return jdbc.sql("""
                        select s.* from review_signature s join review_snapshot p on p.id = s.snapshot_id
                        join bank_revision r on r.id = p.revision_id where r.subject_id = :bankId order by s.signed_at""")
                .param("bankId", bankId)
                .query(Snapshots::signature)
                .list();
    }

    /** The signatures under a snapshot and whether they hold, oldest first. */
    List<ReviewRecord.Signed> signed(Snapshot snapshot) {
        boolean intact = snapshot.intact();
        return signatures(snapshot.id()).stream()
                .map(signature -> new ReviewRecord.Signed(signature.signer(), signature.at(), signature.meaning(), signature.snapshotSha256(),
                        intact && signature.intact() && signature.isFor(snapshot)))
                .toList();
    }

    private static Snapshot snapshot(ResultSet row, int index) throws SQLException {
        return new Snapshot(row.getObject("id", UUID.class), row.getObject("revision_id", UUID.class),
                new Snapshot.StoredBytes(row.getBytes("content")), row.getString("sha256"), row.getInt("method_version"),
                row.getObject("made_at", OffsetDateTime.class));
    }

    private static Signature signature(ResultSet row, int index) throws SQLException {
        return new Signature(row.getObject("id", UUID.class), row.getObject("snapshot_id", UUID.class), row.getString("snapshot_sha256"),
                row.getObject("signer_id", UUID.class), row.getString("signer"), row.getObject("signed_at", OffsetDateTime.class),
                row.getString("meaning"), row.getString("sha256"));
    }
}
