package org.stillrail.electrical.evaluation;

import java.util.Locale;

/** Numbers within sentences: three digits and an engineering prefix. */
final class Words {

    private static final String[] PREFIXES = {"p", "n", "µ", "m", "", "k", "M", "G"};
    private static final int NO_PREFIX = 4;

    private Words() {
    }

    /** For example '4.7 µF'; a ratio has an empty unit and no prefix. */
    static String quantity(double value, String unit) {
        if (value == 0 || !Double.isFinite(value)) {
            return plain(value) + (unit.isEmpty() ? "" : " " + unit);
        }
        if (unit.isEmpty()) {
            return digits(value);
        }
        double rounded = Double.parseDouble(String.format(Locale.ROOT, "%.2e", value));
        int thousands = (int) Math.floor(Math.log10(Math.abs(rounded)) / 3 + 1e-9);
        int prefix = Math.max(0, Math.min(PREFIXES.length - 1, thousands + NO_PREFIX));
        return digits(value / Math.pow(1000, prefix - NO_PREFIX)) + " " + PREFIXES[prefix] + unit;
    }

    /** A share as '12 %'. */
    static String percent(double share) {
        return digits(100 * share) + " %";
    }

    private static String digits(double value) {
        int before = (int) Math.floor(Math.log10(Math.abs(value)) + 1e-9) + 1;
        String text = String.format(Locale.ROOT, "%." + Math.max(0, Math.min(12, 3 - before)) + "f", value);
        return text.indexOf('.') < 0 ? text : text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    private static String plain(double value) {
        return value == 0 ? "0" : Double.toString(value);
    }
}
