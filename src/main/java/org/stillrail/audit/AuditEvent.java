package org.stillrail.audit;

import java.time.Instant;
import java.util.List;
import org.stillrail.document.Sha256;

/**
 * One line of the trail.
 *
 * @param sequenceNumber 1, 2, 3, ... without a gap
 * @param happenedAt in whole microseconds
 * @param actor user name of who did it
 * @param action what was done, a short phrase
 * @param subjectKind the kind of thing it was done to, such as {@code person}
 * @param subjectId which one
 * @param detail a JSON object with whatever else belongs to the action
 * @param previousHash hash of the line before
 * @param hash SHA-256 over the previous hash and all fields, in hexadecimal
 */
public record AuditEvent(
        long sequenceNumber,
        Instant happenedAt,
        String actor,
        String action,
        String subjectKind,
        String subjectId,
        String detail,
        String previousHash,
        String hash) {

    /** What stands in place of the previous hash before the first line. */
    static final String ORIGIN = "0".repeat(64);

    static AuditEvent after(
            long lastNumber, String lastHash, Instant at, String actor, String action, String kind, String id, String detail) {
        long number = lastNumber + 1;
        return new AuditEvent(
                number, at, actor, action, kind, id, detail, lastHash,
                hash(number, at, actor, action, kind, id, detail, lastHash));
    }

    /** Whether the line is as it was written. */
    public boolean intact() {
        return hash.equals(expectedHash());
    }

    /** Whether the line stands right behind another one of its chain. */
    public boolean follows(AuditEvent other) {
        return sequenceNumber == other.sequenceNumber + 1 && previousHash.equals(other.hash);
    }

    /** The hash that the fields call for; differs from {@link #hash()} when something was changed afterwards. */
    String expectedHash() {
        return hash(sequenceNumber, happenedAt, actor, action, subjectKind, subjectId, detail, previousHash);
    }

    /** Every field is preceded by its length, so no two different lines have the same text. */
    private static String hash(
            long number, Instant at, String actor, String action, String kind, String id, String detail, String previousHash) {
        StringBuilder text = new StringBuilder();
        for (String field : List.of(previousHash, Long.toString(number), at.toString(), actor, action, kind, id, detail)) {
            text.append(field.length()).append(':').append(field).append('\n');
        }
        return Sha256.of(text.toString());
    }
}
