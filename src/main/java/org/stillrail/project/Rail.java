package org.stillrail.project;

import java.util.UUID;
import org.stillrail.document.Revision;
import org.stillrail.electrical.requirement.RailFigures;

/**
 * A rail with one of its revisions.
 *
 * @param version counts changes; an edit states the version it started from
 */
public record Rail(UUID id, UUID projectId, String name, int latestNumber, long version, Revision<RailDocument> revision) {

    public RailFigures figures() {
        return revision.document().figures();
    }

    public String purpose() {
        return revision.document().purpose();
    }

    public boolean isLatest() {
        return revision.number() == latestNumber;
    }
}
