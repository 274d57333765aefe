package org.stillrail.library;

import java.util.UUID;

/**
 * Which model a part lends to banks, and why.
 *
 * @param sweepId the sweep for {@link Kind#SWEEP}, else null
 * @param reason  the librarian's words
 */
public record ModelChoice(Kind kind, UUID sweepId, String reason) {

    public static final ModelChoice DATASHEET = new ModelChoice(Kind.DATASHEET, null, null);

    /** Where the model comes from. */
    public enum Kind { DATASHEET, SWEEP }
}
