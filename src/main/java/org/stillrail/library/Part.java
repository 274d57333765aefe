package org.stillrail.library;

import java.util.UUID;
import org.stillrail.document.Revision;

/**
 * A part with one of its revisions.
 *
 * @param vettingReason the condition of a restriction, the replacement of a withdrawal, or the reason given
 * @param latestNumber  number of the newest revision, which may not be the one held here
 * @param version       counts changes to the part; a change states the version it started from
 */
public record Part(UUID id, Vetting vetting, String vettingReason, int latestNumber, long version, Revision<PartDocument> revision) {

    public PartDocument document() {
        return revision.document();
    }

    public String partNumber() {
        return document().partNumber();
    }

    public boolean isLatest() {
        return revision.number() == latestNumber;
    }
}
