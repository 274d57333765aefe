package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The textual form of a mapping: entries {@code name=value}, separated by commas or semicolons. */
final class ColumnMappingText {

    private static final Pattern COLUMN = Pattern.compile("(-?)\\s*(\\d{1,6})\\s*(?::\\s*(.+))?");
    private static final int LONGEST = 1_000;

    private ColumnMappingText() {
    }

    static ColumnMapping parse(String text) {
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException("columns is longer than " + LONGEST + " characters");
        }
        List<MappedColumn> columns = new ArrayList<>();
        double reference = ColumnMapping.DEFAULT_REFERENCE_OHM;
        Delimiter delimiter = null;
        Boolean decimalComma = null;
        for (String entry : text.split("[,;]")) {
            if (entry.isBlank()) {
                continue;
            }
            int equals = entry.indexOf('=');
            if (equals < 0) {
                throw new IllegalArgumentException("'" + entry.strip() + "' is not of the form name=column");
            }
            String name = entry.substring(0, equals).strip();
            String value = entry.substring(equals + 1).strip();
            switch (name) {
                case "reference" -> reference = reference(value);
                case "delimiter" -> delimiter = Delimiter.ofKey(value).orElseThrow(() ->
                        new IllegalArgumentException("delimiter must be comma, semicolon, tab or space, not '" + value + "'"));
                case "decimal" -> decimalComma = decimalComma(value);
                default -> columns.add(column(name, value));
            }
        }
        return new ColumnMapping(columns, reference, delimiter, decimalComma);
    }

    private static double reference(String value) {
        double ohm = NumberText.parse(value, false);
        if (!(ohm > 0)) {
            throw new IllegalArgumentException("reference must be a resistance above 0 ohm, not '" + value + "'");
        }
        return ohm;
    }

    private static boolean decimalComma(String value) {
        if (!value.equals("comma") && !value.equals("point")) {
            throw new IllegalArgumentException("decimal must be comma or point, not '" + value + "'");
        }
        return value.equals("comma");
    }

    private static MappedColumn column(String name, String value) {
        ColumnKind kind = ColumnKind.ofKey(name).orElseThrow(() -> new IllegalArgumentException("'" + name
                + "' is not a kind of column; some kinds are frequency, resistance, reactance, magnitude and phase"));
        Matcher matcher = COLUMN.matcher(value);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("the column of " + name + " must be a number, perhaps negated and with a unit"
                    + " (-4:mOhm), not '" + value + "'");
        }
        return new MappedColumn(kind, Integer.parseInt(matcher.group(2)), matcher.group(3), !matcher.group(1).isEmpty());
    }

    static String write(ColumnMapping mapping) {
        StringJoiner text = new StringJoiner(", ");
        mapping.columns().forEach(column -> text.add(column.toText()));
        if (mapping.referenceOhm() != ColumnMapping.DEFAULT_REFERENCE_OHM) {
            text.add("reference=" + mapping.referenceOhm());
        }
        if (mapping.delimiter() != null) {
            text.add("delimiter=" + mapping.delimiter().key());
        }
        if (mapping.decimalComma() != null) {
            text.add("decimal=" + (mapping.decimalComma() ? "comma" : "point"));
        }
        return text.toString();
    }
}
