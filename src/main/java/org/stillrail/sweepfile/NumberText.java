package org.stillrail.sweepfile;

/**
 * Decimal numbers as instruments write them: {@code 1.5}, {@code .5}, {@code -3E-012}, {@code 1.5D+03}. Stricter than
 * {@link Double#parseDouble}, which would also take NaN, hexadecimal and a trailing d or f.
 */
final class NumberText {

    private static final int LONGEST = 64;
    /** Whole numbers up to this are doubles exactly. */
    private static final long EXACT = 1L << 53;
    /** Powers of ten that are doubles exactly, so that one product or quotient with them is rounded once. */
    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
        1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

    private final CharSequence text;
    private final char point;
    private int at;
    private boolean negative;
    private long digits;
    private int digitCount;
    private int decimals;
    private int exponent;

    private NumberText(CharSequence text, char point) {
        this.text = text;
        this.point = point;
    }

    /** The number, or NaN where the text is none or is too large for a double. */
    static double parse(CharSequence text, boolean decimalComma) {
        if (text.length() == 0 || text.length() > LONGEST) {
            return Double.NaN;
        }
        return new NumberText(text, decimalComma ? ',' : '.').parse();
    }

    static boolean isNumber(CharSequence text, boolean decimalComma) {
        return !Double.isNaN(parse(text, decimalComma));
    }

    private double parse() {
        negative = sign();
        mantissa();
        if (digitCount == 0 || at < text.length() && !exponent() || at < text.length()) {
            return Double.NaN;
        }
        int power = exponent - decimals;
        if (digitCount < 19 && digits <= EXACT && Math.abs(power) < POWERS.length) {
            double magnitude = power < 0 ? digits / POWERS[-power] : digits * POWERS[power];
            return negative ? -magnitude : magnitude;
        }
        double value = Double.parseDouble(plain());
        return Double.isInfinite(value) ? Double.NaN : value;
    }

    /** Moves past a sign and returns whether it was a minus, also the typographic one. */
    private boolean sign() {
        if (at < text.length()) {
            char c = text.charAt(at);
            if (c == '+' || c == '-' || c == '\u2212') {
                at++;
                return c != '+';
            }
        }
        return false;
    }

    private void mantissa() {
        boolean afterPoint = false;
        for (; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
                digitCount++;
                decimals += afterPoint ? 1 : 0;
            } else if (c == point && !afterPoint) {
                afterPoint = true;
            } else {
                return;
            }
        }
    }

    /** Moves past an exponent; false where there is none. */
    private boolean exponent() {
        char mark = text.charAt(at);
        if (mark != 'e' && mark != 'E' && mark != 'd' && mark != 'D') {
            return false;
        }
        at++;
        boolean below = sign();
        int start = at;
        for (; at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9'; at++) {
            exponent = Math.min(9_999, exponent * 10 + (text.charAt(at) - '0'));
        }
        exponent = below ? -exponent : exponent;
        return at > start;
    }

    private String plain() {
        return text.toString().replace('\u2212', '-').replace(point, '.').replace('d', 'e').replace('D', 'e');
    }
}
