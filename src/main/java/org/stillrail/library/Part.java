package org.stillrail.library;

import java.util.UUID;
import org.stillrail.document.Revision;

/**
 * A part with one of its revisions.
 *
 * @param partNumber    as the library lists it: that of its document, unless it came from elsewhere and the number was taken here
 * @param vettingReason the condition of a restriction, or the reason given
 * @param replacement   what takes its place where it is withdrawn, or null
 * @param latestNumber  number of the newest revision, which may not be the one held here
 * @param version       counts changes to the part; a change states the version it started from
 */
public record Part(
        UUID id, String partNumber, Vetting vetting, String vettingReason, Replacement replacement, int latestNumber, long version,
        Revision<PartDocument> revision) {

    /** Another part, by its number. */
    public record Replacement(UUID id, String partNumber) {
    }

    public PartDocument document() {
        return revision.document();
    }

    /** The condition or reason and the replacement in words, or null. */
    public String vettingNote() {
        return Vetting.note(vettingReason, replacement == null ? null : replacement.partNumber());
    }

    public boolean isLatest() {
        return revision.number() == latestNumber;
    }
}
