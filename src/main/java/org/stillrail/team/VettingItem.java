package org.stillrail.team;

/** Something that a team may ask of a part before it is vetted. */
public enum VettingItem {

    DATASHEET("a reference to the datasheet", false),
    SWEEP("at least one sweep, or a stated reason why there is none", true),
    TWO_SAMPLES("sweeps of at least two samples, or a stated reason", true),
    BIAS_CURVE("the capacitance over bias, for ceramics of class 2", false),
    RIPPLE_RATING("a ripple current rating, for bulk technologies", false),
    ENDURANCE("a life test (hours at a temperature), for electrolytics", false),
    TEMPERATURES("the lowest and the highest temperature", false),
    SIZE("length, width and height", false),
    COST("the cost of one part", false);

    private final String label;
    private final boolean reasonSuffices;

    VettingItem(String label, boolean reasonSuffices) {
        this.label = label;
        this.reasonSuffices = reasonSuffices;
    }

    /** As in 'A part needs ...'. */
    public String label() {
        return label;
    }

    /** Whether a librarian's stated reason stands in for it. */
    public boolean reasonSuffices() {
        return reasonSuffices;
    }
}
