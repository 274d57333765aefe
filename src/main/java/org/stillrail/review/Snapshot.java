package org.stillrail.review;

import java.time.OffsetDateTime;
import java.util.UUID;
import org.stillrail.document.Sha256;

/**
 * What was submitted, as stored: the bytes that were hashed then.
 *
 * @param sha256 as it was at submission; the bytes must still give it
 */
record Snapshot(UUID id, UUID revisionId, StoredBytes content, String sha256, int methodVersion, OffsetDateTime madeAt) {

    /** Bytes that nobody can change through this value. */
    static final class StoredBytes {

        private final byte[] bytes;

        StoredBytes(byte[] bytes) {
            this.bytes = bytes.clone();
        }

        byte[] copy() {
            return bytes.clone();
        }
    }

    static Snapshot of(UUID revisionId, byte[] content, int methodVersion, OffsetDateTime at) {
        return new Snapshot(UUID.randomUUID(), revisionId, new StoredBytes(content), Sha256.of(content), methodVersion, at);
    }

    /** False when a byte was changed since submission. */
    boolean intact() {
        return Sha256.of(content.bytes).equals(sha256);
    }
}
