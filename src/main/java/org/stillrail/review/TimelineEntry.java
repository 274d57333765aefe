package org.stillrail.review;

import java.time.OffsetDateTime;

/**
 * A line of what happened to a bank.
 *
 * @param sentence who did what
 * @param remark   what they said, or null
 * @param anchor   id of the line of a comment, or null
 * @param place    link to the verdict or branch that a comment is tied to, or null
 */
record TimelineEntry(OffsetDateTime at, int revision, String sentence, String remark, String anchor, String place) {
}
