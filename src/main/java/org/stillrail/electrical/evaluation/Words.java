package org.stillrail.electrical.evaluation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.stillrail.electrical.requirement.TeamSettings;

/** Numbers within sentences: three digits and an engineering prefix. */
final class Words {

    /** Why the current of a flyback is not known, as the end of a sentence. */
    static final String WITHOUT_TURNS = "the rail does not state the turns ratio of its flyback";

    private static final String[] PREFIXES = {"p", "n", "µ", "m", "", "k", "M", "G"};
    private static final int NO_PREFIX = 4;
    private static final int USUAL_DIGITS = 3;
    private static final int MOST_DIGITS = 7;
    private static final int MOST_DECIMALS = 12;
    private static final double LEAST_WRITTEN = 0.1;

    private Words() {
    }

    /** For example '4.7 µF'; a ratio has an empty unit and no prefix, a currency none either. */
    static String quantity(double value, String unit) {
        return quantity(value, unit, USUAL_DIGITS);
    }

    /** A value that stands beside another, with as many digits as show that they differ, up to seven. */
    static String beside(double value, double other, String unit) {
        int digits = USUAL_DIGITS;
        while (digits < MOST_DIGITS && value != other && quantity(value, unit, digits).equals(quantity(other, unit, digits))) {
            digits++;
        }
        return quantity(value, unit, digits);
    }

    private static String quantity(double value, String unit, int digits) {
        if (value == 0 || !Double.isFinite(value)) {
            return plain(value) + (unit.isEmpty() ? "" : " " + unit);
        }
        if (unit.isEmpty() || TeamSettings.isCurrency(unit)) {
            return digits(value, digits) + (unit.isEmpty() ? "" : " " + unit);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        int thousands = Math.floorDiv(rounded.precision() - rounded.scale() - 1, 3);
        int prefix = Math.max(0, Math.min(PREFIXES.length - 1, thousands + NO_PREFIX));
        return digits(value / Math.pow(1000, prefix - NO_PREFIX), digits) + " " + PREFIXES[prefix] + unit;
    }

    /** To a tenth of a degree, as '62.4 °C'. */
    static String celsius(double temperatureC) {
        return oneDecimal(temperatureC) + " \u00b0C";
    }

    /** A difference of temperatures, likewise; one that would be written as nothing is told from none. */
    static String kelvin(double differenceK) {
        return differenceK > 0 && differenceK < LEAST_WRITTEN / 2 ? "less than 0.1 K" : oneDecimal(differenceK) + " K";
    }

    private static String oneDecimal(double value) {
        return decimal(value, 1);
    }

    /** Three digits, as '45100 h'. */
    static String hours(double hours) {
        return new BigDecimal(hours).round(new MathContext(USUAL_DIGITS)).stripTrailingZeros().toPlainString() + " h";
    }

    /** A share as '12 %'. */
    static String percent(double share) {
        return digits(100 * share, USUAL_DIGITS) + " %";
    }

    private static String digits(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        int before = (int) Math.floor(Math.log10(Math.abs(value)) + 1e-9) + 1;
        return decimal(value, Math.max(0, Math.min(MOST_DECIMALS, digits - before)));
    }

    /** Without zeros at the end. */
    private static String decimal(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return plain(value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String plain(double value) {
        return value == 0 ? "0" : Double.toString(value);
    }
}
