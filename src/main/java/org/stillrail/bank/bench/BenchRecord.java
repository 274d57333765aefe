package org.stillrail.bank.bench;

import java.time.OffsetDateTime;
import java.util.UUID;
import org.stillrail.bank.BenchKind;

/** One record of the bench, attached to a revision of a bank. */
record BenchRecord(
        UUID id, UUID revisionId, BenchKind kind, String rawSha256, String fileName, String author, OffsetDateTime madeAt, BenchDocument document) {
}
