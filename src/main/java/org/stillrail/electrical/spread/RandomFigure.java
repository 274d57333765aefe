package org.stillrail.electrical.spread;

/** A figure whose spread is looked at. */
public enum RandomFigure {

    RIPPLE("Ripple, peak to peak", "V"),
    ESR_AT_CROSSOVER("ESR at crossover", "ohm"),
    IMPEDANCE_AT_CROSSOVER("|Z| at crossover", "ohm"),
    ESR_AT_SWITCHING("ESR at switching", "ohm"),
    IMPEDANCE_AT_SWITCHING("|Z| at switching", "ohm");

    private final String label;
    private final String unit;

    RandomFigure(String label, String unit) {
        this.label = label;
        this.unit = unit;
    }

    public String label() {
        return label;
    }

    public String unit() {
        return unit;
    }
}
