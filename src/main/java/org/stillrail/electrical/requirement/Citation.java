package org.stillrail.electrical.requirement;

/** Where a limit comes from. */
public record Citation(String document, String revision, String clause) {

    @Override
    public String toString() {
        return document + (revision == null ? "" : ", revision " + revision) + (clause == null ? "" : ", clause " + clause);
    }
}
