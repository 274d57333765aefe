package org.stillrail.review;

import java.time.OffsetDateTime;
import java.util.UUID;
import org.stillrail.account.CurrentPerson;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Sha256;

/**
 * A person's signature under a snapshot: who, when, and what they mean by it, bound to the bytes that they signed.
 *
 * @param snapshotSha256 of the signed bytes
 * @param signer         the name as it was then
 * @param sha256         over the canonical JSON of all the others
 */
record Signature(
        UUID id, UUID snapshotId, String snapshotSha256, UUID signerId, String signer, OffsetDateTime at, String meaning, String sha256) {

    static final String MEANING = "I have reviewed this bank against its rail and approve it for use.";

    private record Signed(UUID id, UUID snapshotId, String snapshotSha256, UUID signerId, String signer, String at, String meaning) {
    }

    static Signature of(Snapshot snapshot, CurrentPerson signer, OffsetDateTime at) {
        return of(snapshot, signer.id(), signer.displayName(), at);
    }

    static Signature of(Snapshot snapshot, UUID signerId, String signer, OffsetDateTime at) {
        UUID id = UUID.randomUUID();
        return new Signature(id, snapshot.id(), snapshot.sha256(), signerId, signer, at, MEANING,
                hash(id, snapshot.id(), snapshot.sha256(), signerId, signer, at, MEANING));
    }

    /** False when the signature was changed since it was given. */
    boolean intact() {
        return hash(id, snapshotId, snapshotSha256, signerId, signer, at, meaning).equals(sha256);
    }

    boolean isFor(Snapshot snapshot) {
        return snapshotId.equals(snapshot.id()) && snapshotSha256.equals(snapshot.sha256());
    }

    private static String hash(
            UUID id, UUID snapshotId, String snapshotSha256, UUID signerId, String signer, OffsetDateTime at, String meaning) {
        return Sha256.of(CanonicalJson.write(new Signed(id, snapshotId, snapshotSha256, signerId, signer, at.toInstant().toString(), meaning)));
    }
}
