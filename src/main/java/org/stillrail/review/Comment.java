package org.stillrail.review;

import java.time.OffsetDateTime;
import java.util.UUID;

/**
 * Something said of a revision outside of its steps.
 *
 * @param person  the name as it was then
 * @param subject what it is tied to
 * @param about   that in words, or null for the whole; older comments have the words alone
 */
record Comment(
        UUID id, UUID revisionId, UUID personId, String person, OffsetDateTime at, CommentSubject subject, String about, String remark) {

    /** The id of its line on the bank page. */
    String anchor() {
        return "comment-" + id;
    }
}
