package org.stillrail.document;

import java.time.OffsetDateTime;
import java.util.UUID;

/**
 * One revision of a part, a rail or a bank: inserted once, never changed.
 *
 * @param subjectId what it is a revision of
 * @param number    1, 2, 3 ... within the subject
 * @param author    the author's name as it was when the revision was made
 * @param sha256    of the stored canonical JSON
 */
public record Revision<T>(
        UUID id, UUID subjectId, int number, UUID authorId, String author, OffsetDateTime madeAt, T document, String sha256) {

    public <U> Revision<U> withDocument(U other) {
        return new Revision<>(id, subjectId, number, authorId, author, madeAt, other, sha256);
    }
}
