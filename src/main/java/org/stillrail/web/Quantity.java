package org.stillrail.web;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Engineering entry and display of physical quantities. Inside the application everything is SI; prefixes live only
 * here, at the edge of a page.
 *
 * <p>Read: {@code 22u}, {@code 4m7} (the prefix as decimal point, common in the trade), {@code 100n}, {@code 0.2},
 * {@code 4.7 uF}, {@code 1e-6}, {@code 10k}; a decimal comma is taken as a point. {@code m} is milli and {@code M} is
 * mega; {@code K} is read as kilo.
 */
public final class Quantity {

    private static final Map<Character, Integer> EXPONENTS = Map.ofEntries(
            Map.entry('f', -15), Map.entry('p', -12), Map.entry('n', -9), Map.entry('u', -6), Map.entry('\u00b5', -6),
            Map.entry('\u03bc', -6), Map.entry('m', -3), Map.entry('k', 3), Map.entry('K', 3), Map.entry('M', 6), Map.entry('G', 9));

    private static final String PREFIXES = "fpnu\u00b5\u03bcmkKMG";

    private static final Pattern PLAIN = Pattern.compile(
            "([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d{1,3})?)\\s*([" + PREFIXES + "]?)\\s*([A-Za-z\u03a9\u2126\u00b0%/2]*)");

    private static final Pattern PREFIX_AS_POINT = Pattern.compile("([+-]?\\d+)([" + PREFIXES + "])(\\d+)\\s*([A-Za-z\u03a9\u2126]*)");

    /** Units that take no prefix: nobody reads millidegrees. */
    private static final Set<String> PLAIN_UNITS = Set.of("", "degC", "%", "h", "deg", "dB", "K", "K/W", "mm2", "mm\u00b2");

    /** A code of ISO 4217. */
    private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

    private static final String[] DISPLAY = {"f", "p", "n", "\u00b5", "m", "", "k", "M", "G"};
    private static final int DISPLAY_UNITY = 5;
    /** Powers of ten of a number's first digit between which it is written without exponent. */
    private static final int LEAST_PLAIN = -6;
    private static final int MOST_PLAIN = 12;

    private Quantity() {
    }

    /**
     * @param text what a person typed
     * @param unit the unit that may follow the number, such as {@code F}, {@code ohm} or {@code Hz}; spelt out or as a symbol
     * @return the value in SI, finite
     * @throws IllegalArgumentException with a sentence for the person who typed it
     */
    public static double parse(String text, String unit) {
        String trimmed = text.strip().replace(',', '.');
        Matcher pointed = PREFIX_AS_POINT.matcher(trimmed);
        if (pointed.matches()) {
            requireUnit(text, pointed.group(4), unit);
            return scaled(new BigDecimal(pointed.group(1) + "." + pointed.group(3)), pointed.group(2));
        }
        Matcher plain = PLAIN.matcher(trimmed);
        if (plain.matches()) {
            String prefix = plain.group(2);
            String suffix = plain.group(3);
            if (isUnit(prefix + suffix, unit) && (!suffix.isEmpty() || isPlain(unit))) {
                // 'm' alone could be milli or the unit metre: a whole unit wins only where letters are left over. 'K' is no kilokelvin.
                prefix = "";
            } else {
                requireUnit(text, suffix, unit);
            }
            double value = scaled(new BigDecimal(plain.group(1)), prefix);
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("'" + text + "' is too large");
            }
            return value;
        }
        throw new IllegalArgumentException("'" + text + "' is not a number: write 22u, 4m7, 100n or 0.2" + (unit.isEmpty() ? "" : ", in " + unit));
    }

    /** A share in per cent, without what a product of binary numbers leaves at the sixteenth digit: 55 of 0.55. */
    public static double percent(double share) {
        return Math.rint(share * 1e10) / 1e8;
    }

    private static boolean isPlain(String unit) {
        return PLAIN_UNITS.contains(unit) || CURRENCY.matcher(unit).matches();
    }

    private static void requireUnit(String text, String suffix, String unit) {
        if (!suffix.isEmpty() && !isUnit(suffix, unit)) {
            throw new IllegalArgumentException("'" + text + "' ends in '" + suffix + "', expected " + (unit.isEmpty() ? "no unit" : unit));
        }
    }

    private static boolean isUnit(String suffix, String unit) {
        return suffix.equalsIgnoreCase(unit)
                || unit.equals("degC") && (suffix.equals("\u00b0C") || suffix.equals("C"))
                || unit.equals("ohm") && (suffix.equals("\u03a9") || suffix.equals("\u2126") || suffix.equalsIgnoreCase("ohms") || suffix.equals("R"));
    }

    private static double scaled(BigDecimal number, String prefix) {
        int exponent = prefix.isEmpty() ? 0 : EXPONENTS.get(prefix.charAt(0));
        return number.scaleByPowerOfTen(exponent).doubleValue();
    }

    /** Four significant digits with an engineering prefix and the unit: {@code 22 uF}, {@code 4.7 mohm}. */
    public static String format(double value, String unit) {
        return format(value, unit, 4);
    }

    /** Without exponent, but for numbers that would be mostly zeros. */
    private static String written(BigDecimal number) {
        BigDecimal bare = number.stripTrailingZeros();
        int magnitude = bare.precision() - bare.scale() - 1;
        return magnitude >= LEAST_PLAIN && magnitude <= MOST_PLAIN ? bare.toPlainString()
                : bare.movePointLeft(magnitude).stripTrailingZeros().toPlainString() + "e" + magnitude;
    }

    /** As {@link #format(double, String)} with the number of significant digits given. */
    public static String format(double value, String unit, int digits) {
        if (unit.equals("m\u00b2")) {
            // A prefix on a squared unit is squared too, which nobody reads right.
            return format(value * 1e6, "mm\u00b2", digits);
        }
        String symbol = symbol(unit);
        if (Double.isNaN(value)) {
            return "unknown";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? "unbounded" : "-unbounded";
        }
        if (value == 0) {
            return symbol.isEmpty() ? "0" : "0\u00a0" + symbol;
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
        if (isPlain(unit)) {
            return written(rounded) + (symbol.isEmpty() ? "" : "\u00a0" + symbol);
        }
        int magnitude = rounded.precision() - rounded.scale() - 1;
        int group = Math.max(-DISPLAY_UNITY, Math.min(DISPLAY.length - 1 - DISPLAY_UNITY, Math.floorDiv(magnitude, 3)));
        String number = written(rounded.scaleByPowerOfTen(-3 * group));
        String suffix = DISPLAY[group + DISPLAY_UNITY] + symbol;
        return suffix.isEmpty() ? number : number + "\u00a0" + suffix;
    }

    private static String symbol(String unit) {
        return switch (unit) {
            case "ohm" -> "\u03a9";
            case "degC" -> "\u00b0C";
            case "deg" -> "\u00b0";
            default -> unit;
        };
    }

    /** As {@link #entry(Double)} with the unit behind it, so that a person sees what the field is in: {@code 5.4 mm}. */
    public static String entry(Double value, String unit) {
        if (value != null && isPlain(unit)) {
            return (BigDecimal.valueOf(value).stripTrailingZeros().toPlainString() + " " + unit).strip();
        }
        String number = entry(value);
        if (number.isEmpty() || unit.isEmpty()) {
            return number;
        }
        boolean prefixed = Character.isLetter(number.charAt(number.length() - 1));
        return prefixed
                ? number.substring(0, number.length() - 1) + " " + number.charAt(number.length() - 1) + unit
                : number + " " + unit;
    }

    /** How a stored value is put back into an input: shortest engineering entry that reads back as the same value. */
    public static String entry(Double value) {
        if (value == null) {
            return "";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
        int magnitude = exact.precision() - exact.scale() - 1;
        int group = Math.max(-DISPLAY_UNITY, Math.min(DISPLAY.length - 1 - DISPLAY_UNITY, Math.floorDiv(magnitude, 3)));
        String prefix = DISPLAY[group + DISPLAY_UNITY].replace('\u00b5', 'u');
        return exact.scaleByPowerOfTen(-3 * group).stripTrailingZeros().toPlainString() + prefix;
    }
}
