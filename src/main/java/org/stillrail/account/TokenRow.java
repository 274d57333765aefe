package org.stillrail.account;

import java.time.OffsetDateTime;
import java.util.UUID;

/** A token as pages list it; the token itself is not kept anywhere. */
record TokenRow(UUID id, UUID personId, String name, OffsetDateTime createdAt, OffsetDateTime lastUsedAt, OffsetDateTime revokedAt) {

    public boolean revoked() {
        return revokedAt != null;
    }
}
