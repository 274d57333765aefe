package org.stillrail.electrical.requirement;

/** How the converter makes the rail, which decides the current that flows into the bank. */
public enum Topology {

    BUCK("buck"),
    BOOST("boost"),
    INVERTING_BUCK_BOOST("inverting buck-boost"),
    FLYBACK("flyback"),
    /** Any other, of which the rail draws the current. */
    DRAWN("drawn-current");

    private final String label;

    Topology(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
