package org.stillrail.sweepfile;

import java.util.Arrays;
import java.util.Optional;

/** What a column of a text file can hold. The key is its name in the textual form of a mapping. */
public enum ColumnKind {

    FREQUENCY("frequency", Dimension.FREQUENCY),
    RESISTANCE("resistance", Dimension.RESISTANCE),
    REACTANCE("reactance", Dimension.RESISTANCE),
    MAGNITUDE("magnitude", Dimension.RESISTANCE),
    PHASE("phase", Dimension.ANGLE),
    SERIES_CAPACITANCE("series-capacitance", Dimension.CAPACITANCE),
    SERIES_INDUCTANCE("series-inductance", Dimension.INDUCTANCE),
    PARALLEL_CAPACITANCE("parallel-capacitance", Dimension.CAPACITANCE),
    PARALLEL_RESISTANCE("parallel-resistance", Dimension.RESISTANCE),
    DISSIPATION("dissipation", Dimension.RATIO),
    QUALITY("quality", Dimension.RATIO),
    CONDUCTANCE("conductance", Dimension.CONDUCTANCE),
    SUSCEPTANCE("susceptance", Dimension.CONDUCTANCE),
    ADMITTANCE_MAGNITUDE("admittance-magnitude", Dimension.CONDUCTANCE),
    ADMITTANCE_PHASE("admittance-phase", Dimension.ANGLE),
    S11_REAL("s11-real", Dimension.RATIO),
    S11_IMAGINARY("s11-imaginary", Dimension.RATIO),
    S11_MAGNITUDE("s11-magnitude", Dimension.RATIO),
    S11_DECIBEL("s11-decibel", Dimension.DECIBEL),
    S11_PHASE("s11-phase", Dimension.ANGLE),
    S21_REAL("s21-real", Dimension.RATIO),
    S21_IMAGINARY("s21-imaginary", Dimension.RATIO),
    S21_MAGNITUDE("s21-magnitude", Dimension.RATIO),
    S21_DECIBEL("s21-decibel", Dimension.DECIBEL),
    S21_PHASE("s21-phase", Dimension.ANGLE),
    /** Changes where one sweep ends and the next begins; any text. */
    BLOCK("block", Dimension.LABEL);

    private final String key;
    private final Dimension dimension;

    ColumnKind(String key, Dimension dimension) {
        this.key = key;
        this.dimension = dimension;
    }

    public String key() {
        return key;
    }

    public Dimension dimension() {
        return dimension;
    }

    static Optional<ColumnKind> ofKey(String key) {
        return Arrays.stream(values()).filter(kind -> kind.key.equals(key)).findFirst();
    }
}
