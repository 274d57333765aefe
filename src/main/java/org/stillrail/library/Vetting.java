package org.stillrail.library;

/** How far a part may be relied on. */
public enum Vetting {

    PROPOSED("proposed"),
    VETTED("vetted"),
    RESTRICTED("restricted"),
    WITHDRAWN("withdrawn");

    private final String label;

    Vetting(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
