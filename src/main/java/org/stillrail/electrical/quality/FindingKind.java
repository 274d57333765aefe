package org.stillrail.electrical.quality;

/** What can be wrong with a measured sweep, and what to do then. */
public enum FindingKind {

    NOISE("noise", "Average more, lower the bandwidth of the receiver, or raise the level within what the part stands."),
    GAP("gap", "Measure again over the gap, or read nothing there."),
    FEW_POINTS("few points", "Measure with more points a decade: a narrow resonance may lie between two points."),
    NEGATIVE_RESISTANCE("negative resistance",
            "A part without a source cannot do this: repeat the calibration, and take out the fixture with an open and a short."),
    KRAMERS_KRONIG("Kramers-Kronig residual",
            "Resistance and reactance do not belong to one linear part at rest: look for a range switch, drift, a wrong fixture or an overdriven part."),
    DATASHEET("off the datasheet", "Check part number, bias, temperature and fixture; a second sample tells a bad piece from a bad sheet."),
    DRIFT("drift between repeats", "Let sample and instrument settle, clean and reseat the contacts, then repeat."),
    STALE_CALIBRATION("stale calibration", "Calibrate on the day of the measurement and sweep again.");

    private final String label;
    private final String advice;

    FindingKind(String label, String advice) {
        this.label = label;
        this.advice = advice;
    }

    public String label() {
        return label;
    }

    /** What to do, in a sentence. */
    public String advice() {
        return advice;
    }
}
