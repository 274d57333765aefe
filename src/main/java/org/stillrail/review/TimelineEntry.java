package org.stillrail.review;

import java.time.OffsetDateTime;

/**
 * A line of what happened to a bank.
 *
 * @param sentence who did what
 * @param remark   what they said, or null
 */
record TimelineEntry(OffsetDateTime at, int revision, String sentence, String remark) {
}
