package org.stillrail.sweepfile;

import java.util.Locale;
import java.util.Map;

/** What a column's numbers measure, and the units that may stand in its heading or in a mapping. */
public enum Dimension {

    FREQUENCY("Hz"), RESISTANCE("Ohm"), CONDUCTANCE("S"), CAPACITANCE("F"), INDUCTANCE("H"), ANGLE("deg"), RATIO(""),
    DECIBEL("dB"), LABEL("");

    private static final Map<Character, Double> PREFIXES = Map.ofEntries(
            Map.entry('f', 1e-15), Map.entry('p', 1e-12), Map.entry('n', 1e-9), Map.entry('u', 1e-6), Map.entry('\u00b5', 1e-6),
            Map.entry('\u03bc', 1e-6), Map.entry('m', 1e-3), Map.entry('k', 1e3), Map.entry('K', 1e3), Map.entry('M', 1e6),
            Map.entry('G', 1e9), Map.entry('P', 1e-12), Map.entry('N', 1e-9), Map.entry('U', 1e-6));

    private final String unit;

    Dimension(String unit) {
        this.unit = unit;
    }

    /** The unit that is meant where none is given. */
    public String unit() {
        return unit;
    }

    /**
     * What a number in this unit is multiplied by to be in SI (angles: in radians); NaN where the unit does not fit.
     * Upper and lower case matter only for the prefix m.
     */
    double scale(String given) {
        String text = given.strip();
        if (text.isEmpty()) {
            return this == ANGLE ? Math.PI / 180 : 1;
        }
        String lower = text.toLowerCase(Locale.ROOT);
        return switch (this) {
            case FREQUENCY -> lower.equals("rad/s") ? 1 / (2 * Math.PI) : frequency(text, lower);
            case RESISTANCE -> prefixed(text, lower, "ohms", "ohm", "\u03c9", "\u2126");
            case CONDUCTANCE -> lower.equals("1/ohm") ? 1 : prefixed(text, lower, "siemens", "mho", "s");
            case CAPACITANCE -> prefixed(text, lower, "farad", "f");
            case INDUCTANCE -> prefixed(text, lower, "henry", "h");
            case ANGLE -> angle(lower);
            case RATIO -> lower.equals("%") ? 0.01 : lower.equals("1") ? 1 : Double.NaN;
            case DECIBEL -> lower.equals("db") ? 1 : Double.NaN;
            case LABEL -> Double.NaN;
        };
    }

    /** Millihertz is written with care where it is meant; all small letters mean megahertz. */
    private static double frequency(String text, String lower) {
        return text.equals("mhz") ? 1e6 : prefixed(text, lower, "hertz", "hz");
    }

    private static double angle(String lower) {
        return switch (lower) {
            case "deg", "deg.", "degree", "degrees", "\u00b0", "\u00ba" -> Math.PI / 180;
            case "rad", "radian", "radians" -> 1;
            case "mrad" -> 1e-3;
            default -> Double.NaN;
        };
    }

    private static double prefixed(String text, String lower, String... bases) {
        for (String base : bases) {
            if (lower.equals(base)) {
                return 1;
            }
            if (lower.length() == base.length() + 1 && lower.endsWith(base)) {
                Double scale = PREFIXES.get(text.charAt(0));
                return scale == null ? Double.NaN : scale;
            }
        }
        return Double.NaN;
    }

    /** Whether the text is a unit of any quantity; a bare 1 in a heading is rather a number. */
    static boolean isUnit(String text) {
        if (text.isBlank() || text.equals("1")) {
            return false;
        }
        for (Dimension dimension : values()) {
            if (!Double.isNaN(dimension.scale(text))) {
                return true;
            }
        }
        return false;
    }
}
