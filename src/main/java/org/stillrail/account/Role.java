package org.stillrail.account;

/** What a person may do beyond reading; one person holds one or several. */
public enum Role {
    /** Reads, compares and exports. */
    VIEWER("viewer"),
    /** Makes projects, edits their rails and banks, proposes parts, imports sweeps. */
    ENGINEER("engineer"),
    /** Vets parts and chooses their models. */
    LIBRARIAN("librarian"),
    /** Signs, returns and recalls what others wrote. */
    REVIEWER("reviewer"),
    /** Looks after people, roles, derating rules and settings. */
    ADMINISTRATOR("administrator");

    private final String label;

    Role(String label) {
        this.label = label;
    }

    /** The role's name on a page. */
    public String label() {
        return label;
    }

    String authority() {
        return "ROLE_" + name();
    }
}
