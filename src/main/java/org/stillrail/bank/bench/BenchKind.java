package org.stillrail.bank.bench;

/** What a record of the bench is. */
enum BenchKind {

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
