package org.stillrail.electrical.spread;

/** A figure whose spread is looked at. */
public enum RandomFigure {

    RIPPLE("Ripple, peak to peak", "V"),
    ESR_AT_CROSSOVER("ESR at crossover", "ohm"),
    IMPEDANCE_AT_CROSSOVER("|Z| at crossover", "ohm"),
    ESR_AT_SWITCHING("ESR at switching", "ohm"),
    IMPEDANCE_AT_SWITCHING("|Z| at switching", "ohm"),
    /** Of a bank at two nodes, whose other figures are those at the load. */
    ESR_FOR_CONVERTER_AT_CROSSOVER("ESR at crossover, seen by the converter", "ohm"),
    /** Likewise: the voltage at the load for the converter's current. */
    TRANSFER_AT_SWITCHING("|Z| at switching, converter to load", "ohm"),
    CROSSOVER("Crossover", "Hz"),
    PHASE_MARGIN("Phase margin", "deg"),
    SENSITIVITY_PEAK("Peak of 1 / |1 + T|", ""),
    /** Of one part of a branch, as its verdict weighs it. */
    RIPPLE_CURRENT("Ripple current", "A"),
    CORE_TEMPERATURE("Core temperature", "degC"),
    LIFE("Life", "h"),
    /** With half the ripple, over what the derating rule leaves of the rating. */
    VOLTAGE_SHARE("Share of the allowed voltage", ""),
    /** Of the load step and of its way back. */
    UNDERSHOOT("Undershoot", "V"),
    OVERSHOOT("Overshoot", "V"),
    /** The larger of the two. */
    DEVIATION("Deviation", "V"),
    /** Of accuracy, regulation, half the ripple and the step, on the worse side. */
    WINDOW_SHARE("Share of the window", ""),
    /** Over what the load step needs. */
    BULK_CHARGE_SHARE("Bulk capacitance over need", ""),
    /** Infinite where none is needed. */
    GAIN_MARGIN("Gain margin", "dB"),
    START_UP_CURRENT("Start-up current", "A"),
    /** How far the rail falls, over what would reverse a part too far. */
    REVERSE_SHARE("Fall over what reverses a part", "");

    private final String label;
    private final String unit;

    RandomFigure(String label, String unit) {
        this.label = label;
        this.unit = unit;
    }

    /** Whether only a bank at two nodes has it. */
    boolean ofTwoNodes() {
        return this == ESR_FOR_CONVERTER_AT_CROSSOVER || this == TRANSFER_AT_SWITCHING;
    }

    /** Whether only a bank with a loop has it. */
    boolean ofLoop() {
        return this == CROSSOVER || this == PHASE_MARGIN || this == SENSITIVITY_PEAK;
    }

    /** Whether it needs more than the impedance of a bank, see {@link FurtherFigures}. */
    boolean further() {
        return switch (this) {
            case RIPPLE_CURRENT, CORE_TEMPERATURE, LIFE, VOLTAGE_SHARE, UNDERSHOOT, OVERSHOOT, DEVIATION, WINDOW_SHARE, BULK_CHARGE_SHARE,
                    GAIN_MARGIN, START_UP_CURRENT, REVERSE_SHARE -> true;
            default -> false;
        };
    }

    public String label() {
        return label;
    }

    public String unit() {
        return unit;
    }
}
