package org.stillrail.review;

import java.time.OffsetDateTime;
import java.util.UUID;

/**
 * One step that was taken with a revision.
 *
 * @param number    1, 2, 3, ... within the revision
 * @param person    the name as it was then
 * @param remark    what was said with it, or null
 */
record StepTaken(UUID revisionId, int number, ReviewStep step, UUID personId, String person, OffsetDateTime at, String remark) {
}
