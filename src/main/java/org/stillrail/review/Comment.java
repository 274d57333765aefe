package org.stillrail.review;

import java.time.OffsetDateTime;
import java.util.UUID;

/**
 * Something said of a revision outside of its steps.
 *
 * @param person the name as it was then
 * @param about  a verdict or a branch of the revision in words, or null for the whole
 */
record Comment(UUID revisionId, UUID personId, String person, OffsetDateTime at, String about, String remark) {
}
