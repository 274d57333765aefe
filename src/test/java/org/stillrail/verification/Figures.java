package org.stillrail.verification;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Numbers of the document: six figures at most, so that another JDK's last digit does not change it. */
final class Figures {

    private static final int LONGEST_LIST = 8;
    private static final Pattern JAVA_DOUBLE = Pattern.compile("(?<![\\d.])\\d+\\.(\\d+E-?\\d+|0(?![\\d.]))");

    private Figures() {
    }

    /** A sentence with 1.0 and 2.0E7 in it as 1 and 2e7. */
    static String shortened(String text) {
        return JAVA_DOUBLE.matcher(text).replaceAll(number -> words(Double.parseDouble(number.group())));
    }

    static String words(double value) {
        return words(value, new MathContext(6));
    }

    static String words(double value, String unit) {
        return unit.isEmpty() ? words(value) : words(value) + " " + unit;
    }

    /** An error, of which only the size matters. */
    static String size(double value) {
        return words(value, new MathContext(1));
    }

    private static String words(double value, MathContext digits) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(digits).stripTrailingZeros();
        int exponent = rounded.precision() - rounded.scale() - 1;
        if (exponent >= -4 && exponent < 6) {
            return rounded.toPlainString();
        }
        return rounded.scaleByPowerOfTen(-exponent).toPlainString() + "e" + exponent;
    }

    /** The values one by one, or how many there are and how far they reach. */
    static String words(double[] values, String unit) {
        String list = values.length <= LONGEST_LIST
                ? Arrays.stream(values).mapToObj(Figures::words).collect(Collectors.joining(", "))
                : values.length + " values from " + words(Arrays.stream(values).min().getAsDouble())
                        + " to " + words(Arrays.stream(values).max().getAsDouble());
        return unit.isEmpty() ? list : list + " " + unit;
    }

    static boolean listed(double[] values) {
        return values.length <= LONGEST_LIST;
    }
}
