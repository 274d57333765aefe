package org.stillrail.sweepfile;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Which column of a text file is what. Its textual form, for storing and for the calculation API, is described in
 * docs/sweep-files.md: {@code frequency=1:kHz, resistance=3, reactance=-4:mOhm}.
 *
 * @param columns      the frequency, a pair of kinds that make a complex value, and perhaps the block
 * @param referenceOhm the reference of S11 or S21
 * @param delimiter    null to find out
 * @param decimalComma null to find out
 */
public record ColumnMapping(List<MappedColumn> columns, double referenceOhm, Delimiter delimiter, Boolean decimalComma) {

    public static final double DEFAULT_REFERENCE_OHM = 50;

    /** @throws IllegalArgumentException naming what is missing, given twice or left over */
    public ColumnMapping {
        columns = List.copyOf(columns);
        if (!(referenceOhm > 0) || Double.isInfinite(referenceOhm)) {
            throw new IllegalArgumentException("reference must be a resistance above 0 ohm");
        }
        Map<ColumnKind, MappedColumn> byKind = byKind(columns);
        if (!byKind.containsKey(ColumnKind.FREQUENCY)) {
            throw new IllegalArgumentException("columns must name the frequency, for example frequency=1");
        }
        ColumnPair pair = pair(byKind);
        for (ColumnKind kind : byKind.keySet()) {
            if (kind != ColumnKind.FREQUENCY && kind != ColumnKind.BLOCK && kind != pair.first() && kind != pair.second()) {
                throw new IllegalArgumentException("columns name " + kind.key() + " beside " + pair.first().key() + " and "
                        + pair.second().key() + "; name one pair only");
            }
        }
    }

    public static ColumnMapping of(MappedColumn... columns) {
        return new ColumnMapping(List.of(columns), DEFAULT_REFERENCE_OHM, null, null);
    }

    /** @throws IllegalArgumentException with the part of the text that is wrong */
    public static ColumnMapping parse(String text) {
        return ColumnMappingText.parse(text);
    }

    /** The textual form, from which {@link #parse} makes an equal mapping. */
    public String toText() {
        return ColumnMappingText.write(this);
    }

    MappedColumn column(ColumnKind kind) {
        return byKind(columns).get(kind);
    }

    ColumnPair pair() {
        return pair(byKind(columns));
    }

    private static Map<ColumnKind, MappedColumn> byKind(List<MappedColumn> columns) {
        Map<ColumnKind, MappedColumn> byKind = new EnumMap<>(ColumnKind.class);
        for (MappedColumn column : columns) {
            if (byKind.put(column.kind(), column) != null) {
                throw new IllegalArgumentException("columns name " + column.kind().key() + " twice");
            }
        }
        return byKind;
    }

    private static ColumnPair pair(Map<ColumnKind, MappedColumn> byKind) {
        return ColumnPair.among(byKind.keySet()).orElseThrow(() -> new IllegalArgumentException("columns "
                + byKind.keySet().stream().map(ColumnKind::key).collect(Collectors.joining(", "))
                + " do not make an impedance; give a pair such as resistance and reactance, magnitude and phase,"
                + " or s21-decibel and s21-phase"));
    }
}
