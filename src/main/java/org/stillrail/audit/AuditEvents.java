package org.stillrail.audit;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The stored lines and the row that says where the chain ends. */
@Repository
class AuditEvents {

    /** Number and hash of the newest line. */
    record Head(long sequenceNumber, String hash) {}

    private final JdbcClient jdbc;

    AuditEvents(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Writers queue here until the transaction that holds the row ends, which keeps the numbers without a gap. */
    Head lockHead() {
        return jdbc.sql("select sequence_number, hash from audit_head where id = 1 for update")
                .query(AuditEvents::headRow).single();
    }

    Head head() {
        return jdbc.sql("select sequence_number, hash from audit_head where id = 1").query(AuditEvents::headRow).single();
    }

    void append(AuditEvent event) {
        jdbc.sql("""
                        insert into audit_event (sequence_number, happened_at, actor, action, subject_kind, subject_id, detail,
                            previous_hash, hash)
                        values (:number, :at, :actor, :action, :kind, :id, :detail, :previous, :hash)""")
                .param("number", event.sequenceNumber())
                .param("at", event.happenedAt().atOffset(ZoneOffset.UTC))
                .param("actor", event.actor())
                .param("action", event.action())
                .param("kind", event.subjectKind())
                .param("id", event.subjectId())
                .param("detail", event.detail())
                .param("previous", event.previousHash())
                .param("hash", event.hash())
                .update();
        jdbc.sql("update audit_head set sequence_number = :number, hash = :hash where id = 1")
                .param("number", event.sequenceNumber())
                .param("hash", event.hash())
                .update();
    }

    /** Up to {@code count} lines with a number above {@code number}, oldest first. */
    List<AuditEvent> after(long number, int count) {
        return jdbc.sql("select * from audit_event where sequence_number > :number order by sequence_number limit :count")
                .param("number", number)
                .param("count", count)
                .query(AuditEvents::eventRow).list();
    }

    /** Up to {@code count} lines with a number below {@code number}, newest first. */
    List<AuditEvent> before(long number, int count) {
        return jdbc.sql("select * from audit_event where sequence_number < :number order by sequence_number desc limit :count")
                .param("number", number)
                .param("count", count)
                .query(AuditEvents::eventRow).list();
    }

    private static Head headRow(ResultSet row, int index) throws SQLException {
        return new Head(row.getLong("sequence_number"), row.getString("hash"));
    }

    static AuditEvent eventRow(ResultSet row, int index) throws SQLException {
        return new AuditEvent(
                row.getLong("sequence_number"),
                row.getObject("happened_at", OffsetDateTime.class).toInstant(),
                row.getString("actor"),
                row.getString("action"),
                row.getString("subject_kind"),
                row.getString("subject_id"),
                row.getString("detail"),
                row.getString("previous_hash"),
                row.getString("hash"));
    }
}
