package org.stillrail.review;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A bank revision that waits for someone.
 *
 * @param rail   name of its rail, with its project
 * @param author who wrote the revision
 * @param on     since when, or until when
 * @param reason why it waits, or why this person cannot take it; null where nothing need be said
 */
record WaitingRow(UUID bankId, String bank, int revision, String rail, String author, LocalDate on, String reason) {

    public String link() {
        return "/banks/" + bankId + "/revisions/" + revision;
    }
}
