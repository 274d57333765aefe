package org.stillrail.bank;

/** What a record of the bench is. */
public enum BenchKind {

    IMPEDANCE("impedance of the assembled bank"),
    LOOP("loop gain"),
    RIPPLE("ripple, oscilloscope"),
    STEP("load step, oscilloscope");

    private final String label;

    BenchKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
