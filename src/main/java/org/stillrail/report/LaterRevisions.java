package org.stillrail.report;

import java.util.UUID;

/**
 * Revisions that a part which is here has gained elsewhere, following the newest one here.
 *
 * @param partNumber as the library lists it here
 * @param here       number of the newest revision here
 * @param newest     number of the newest one in the file
 * @param author     of that one
 * @param maker      that one names
 * @param wasVetted  whether the part is vetted here
 */
record LaterRevisions(UUID partId, String partNumber, int here, int newest, String author, String maker, boolean wasVetted) {

    /** Why a part that was vetted is proposed again. */
    String reason() {
        return "revision " + newest + " came with a project from elsewhere; revision " + here + " was vetted here";
    }

    private String revisions() {
        return newest == here + 1 ? "revision " + newest : "revisions " + (here + 1) + " to " + newest;
    }

    /** @param banks how many banks here use the part */
    String sentence(int banks) {
        String text = "Part '" + partNumber + "' gains " + revisions() + ", the newest by " + author + ". Revisions only follow one another, so revision " + newest
                + " becomes the newest here";
        if (wasVetted) {
            text += ", and the part, vetted here at revision " + here + ", is proposed again until a librarian has looked at it";
        }
        return text + "." + (banks == 0 ? "" : " " + (banks == 1 ? "One bank here that uses it will" : banks + " banks here that use it will")
                + " say that the evidence has changed; nothing approved changes by itself.");
    }
}
