package org.stillrail.sweepfile;

/**
 * Decimal numbers as instruments write them: {@code 1.5}, {@code .5}, {@code -3E-012}, {@code 1.5D+03}. Stricter than
 * {@link Double#parseDouble}, which would also take NaN, hexadecimal and a trailing d or f.
 */
final class NumberText {

    private NumberText() {
    }

    /** The number, or NaN where the text is none or is too large for a double. */
    static double parse(CharSequence text, boolean decimalComma) {
        int end = text.length();
        if (end == 0 || end > 64) {
            return Double.NaN;
        }
        char[] plain = new char[end];
        int i = 0;
        int digits = 0;
        if (isSign(text.charAt(0))) {
            plain[i] = asciiSign(text.charAt(0));
            i++;
        }
        boolean point = false;
        for (; i < end; i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                plain[i] = c;
                digits++;
            } else if (!point && c == (decimalComma ? ',' : '.')) {
                plain[i] = '.';
                point = true;
            } else {
                break;
            }
        }
        if (digits == 0 || i < end && !exponent(text, i, plain)) {
            return Double.NaN;
        }
        double value = Double.parseDouble(new String(plain));
        return Double.isInfinite(value) ? Double.NaN : value;
    }

    static boolean isNumber(CharSequence text, boolean decimalComma) {
        return !Double.isNaN(parse(text, decimalComma));
    }

    private static boolean exponent(CharSequence text, int start, char[] plain) {
        char mark = text.charAt(start);
        if (mark != 'e' && mark != 'E' && mark != 'd' && mark != 'D') {
            return false;
        }
        plain[start] = 'e';
        int i = start + 1;
        if (i < text.length() && isSign(text.charAt(i))) {
            plain[i] = asciiSign(text.charAt(i));
            i++;
        }
        if (i == text.length()) {
            return false;
        }
        for (; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < '0' || c > '9') {
                return false;
            }
            plain[i] = c;
        }
        return true;
    }

    private static boolean isSign(char c) {
        return c == '+' || c == '-' || c == '\u2212';
    }

    private static char asciiSign(char c) {
        return c == '+' ? '+' : '-';
    }
}
