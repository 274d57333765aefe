package org.stillrail.demo;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as instruments print them. Rounded from the exact binary value: the shortest decimal form of a double, from which
 * formatted output is rounded, is not the same on all JDKs.
 */
final class Decimals {

    private Decimals() {
    }

    /** For example -1.234568e-03. */
    static String scientific(double value, int decimals) {
        if (value == 0) {
            return "0." + "0".repeat(decimals) + "e+00";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(decimals + 1, RoundingMode.HALF_EVEN));
        int exponent = rounded.precision() - rounded.scale() - 1;
        BigDecimal mantissa = rounded.movePointLeft(exponent).setScale(decimals, RoundingMode.UNNECESSARY);
        int size = Math.abs(exponent);
        return mantissa.toPlainString() + 'e' + (exponent < 0 ? '-' : '+') + (size < 10 ? "0" : "") + size;
    }

    /** For example -89.912. */
    static String fixed(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** Four significant digits: the frequencies that a sweep really steps through. */
    static double fourDigits(double value) {
        return new BigDecimal(value).round(new MathContext(4, RoundingMode.HALF_EVEN)).doubleValue();
    }
}
