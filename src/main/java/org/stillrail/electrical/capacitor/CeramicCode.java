package org.stillrail.electrical.capacitor;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A class code of a ceramic and what it promises over temperature, against 25 degC. The three characters of EIA-198, seen in public
 * copies only; letters and digits on which the copies differ (B, L, and digit 2) are not known here. The codes of IEC 60384
 * ({@code 2C1}, {@code CG} or {@code 1B/CG}) are from memory; their reference of 20 degC is taken as 25.
 *
 * @param code     upper case, such as X7R, C0G or 2C1
 * @param classOne whether the change is a temperature coefficient rather than a band
 * @param lowC     lower end of the temperature range in degC
 * @param highC    upper end
 * @param least    lowest change: per cent for class 2, ppm/K for class 1
 * @param most     highest change
 */
public record CeramicCode(String code, boolean classOne, double lowC, double highC, double least, double most) {

    private static final double REFERENCE_C = 25;
    private static final Map<Character, Double> LOW_C = Map.of('X', -55.0, 'Y', -30.0, 'Z', 10.0);
    private static final Map<Character, Double> HIGH_C = Map.of('4', 65.0, '5', 85.0, '6', 105.0, '7', 125.0, '8', 150.0, '9', 200.0);
    private static final Map<Character, double[]> CHANGE_PERCENT = Map.ofEntries(
            Map.entry('A', new double[] {-1, 1}),
            Map.entry('C', new double[] {-2.2, 2.2}),
            Map.entry('D', new double[] {-3.3, 3.3}),
            Map.entry('E', new double[] {-4.7, 4.7}),
            Map.entry('F', new double[] {-7.5, 7.5}),
            Map.entry('P', new double[] {-10, 10}),
            Map.entry('R', new double[] {-15, 15}),
            Map.entry('S', new double[] {-22, 22}),
            Map.entry('T', new double[] {-33, 22}),
            Map.entry('U', new double[] {-56, 22}),
            Map.entry('V', new double[] {-82, 22}));
    private static final Map<Character, Double> COEFFICIENT = Map.of(
            'C', 0.0, 'M', 1.0, 'P', 1.5, 'R', 2.2, 'S', 3.3, 'T', 4.7, 'U', 7.5);
    private static final Map<Character, Double> MULTIPLIER = Map.of('0', -1.0, '1', -10.0, '2', -100.0, '3', -1000.0);
    private static final Map<Character, Double> COEFFICIENT_TOLERANCE = Map.of(
            'G', 30.0, 'H', 60.0, 'J', 120.0, 'K', 250.0, 'L', 500.0, 'M', 1000.0, 'N', 2500.0);
    /** The range that class 1 parts are stated over; the code itself does not name it. */
    private static final double CLASS_ONE_LOW_C = -55;
    private static final double CLASS_ONE_HIGH_C = 125;

    private static final Map<Character, double[]> IEC_CHANGE_PERCENT = Map.of(
            'B', new double[] {-10, 10}, 'C', new double[] {-20, 20}, 'D', new double[] {-30, 20}, 'E', new double[] {-56, 22},
            'F', new double[] {-80, 30}, 'R', new double[] {-15, 15}, 'X', new double[] {-15, 15});
    private static final Map<Character, double[]> IEC_RANGE_C = Map.of(
            '1', new double[] {-55, 125}, '2', new double[] {-55, 85}, '3', new double[] {-40, 85}, '4', new double[] {-25, 85},
            '6', new double[] {10, 85});
    private static final Map<Character, Double> IEC_COEFFICIENT = Map.of(
            'A', 100.0, 'C', 0.0, 'H', -33.0, 'L', -75.0, 'P', -150.0, 'R', -220.0, 'S', -330.0, 'T', -470.0, 'U', -750.0);
    private static final Map<Character, Double> IEC_TOLERANCE = Map.of('G', 30.0, 'H', 60.0, 'J', 120.0, 'K', 250.0);
    private static final String IEC_SUBCLASS = "1B/";

    /** What a code means; empty where it is not known. */
    public static Optional<CeramicCode> find(String code) {
        String upper = code == null ? "" : code.strip().toUpperCase(Locale.ROOT);
        String bare = upper.startsWith(IEC_SUBCLASS) ? upper.substring(IEC_SUBCLASS.length()) : upper;
        if (bare.length() == 2) {
            return iecClassOne(bare);
        }
        if (upper.length() != 3) {
            return Optional.empty();
        }
        if (upper.charAt(0) == '2') {
            return iecClassTwo(upper);
        }
        String read = upper.equals("NP0") || upper.equals("NPO") || upper.equals("COG") ? "C0G" : upper;
        Optional<CeramicCode> second = classTwo(read);
        return second.isPresent() ? second : classOne(read);
    }

    private static Optional<CeramicCode> iecClassTwo(String code) {
        double[] change = IEC_CHANGE_PERCENT.get(code.charAt(1));
        double[] range = IEC_RANGE_C.get(code.charAt(2));
        return change == null || range == null ? Optional.empty()
                : Optional.of(new CeramicCode(code, false, range[0], range[1], change[0], change[1]));
    }

    private static Optional<CeramicCode> iecClassOne(String code) {
        Double coefficient = IEC_COEFFICIENT.get(code.charAt(0));
        Double tolerance = IEC_TOLERANCE.get(code.charAt(1));
        return coefficient == null || tolerance == null ? Optional.empty()
                : Optional.of(new CeramicCode(code, true, CLASS_ONE_LOW_C, CLASS_ONE_HIGH_C, coefficient - tolerance, coefficient + tolerance));
    }

    private static Optional<CeramicCode> classTwo(String code) {
        Double low = LOW_C.get(code.charAt(0));
        Double high = HIGH_C.get(code.charAt(1));
        double[] change = CHANGE_PERCENT.get(code.charAt(2));
        return low == null || high == null || change == null
                ? Optional.empty()
                : Optional.of(new CeramicCode(code, false, low, high, change[0], change[1]));
    }

    private static Optional<CeramicCode> classOne(String code) {
        Double figure = COEFFICIENT.get(code.charAt(0));
        Double multiplier = MULTIPLIER.get(code.charAt(1));
        Double tolerance = COEFFICIENT_TOLERANCE.get(code.charAt(2));
        if (figure == null || multiplier == null || tolerance == null) {
            return Optional.empty();
        }
        double coefficient = figure * multiplier;
        return Optional.of(new CeramicCode(
                code, true, CLASS_ONE_LOW_C, CLASS_ONE_HIGH_C, coefficient - tolerance, coefficient + tolerance));
    }

    /**
     * Capacitance over that at 25 degC. A class 2 code promises its whole band at any other temperature; the typical value
     * is then 1, for want of a curve. A class 1 code promises a straight line with a tolerance on its slope.
     */
    public Band shareAt(double temperatureC) {
        double kelvin = temperatureC - REFERENCE_C;
        if (kelvin == 0) {
            return Band.ONE;
        }
        if (!classOne) {
            return new Band(1 + least / 100, 1, 1 + most / 100);
        }
        double a = 1 + least * 1e-6 * kelvin;
        double b = 1 + most * 1e-6 * kelvin;
        return new Band(Math.min(a, b), (a + b) / 2, Math.max(a, b));
    }

    /** Whether the code promises anything at a temperature. */
    public boolean covers(double temperatureC) {
        return temperatureC >= lowC && temperatureC <= highC;
    }

    /**
     * The per cent that is usually lost in a decade of hours: class 1 none; class 2 by how far it may change over temperature, since both go with the
     * permittivity: to 15 per cent (R) 1 to 4, to 56 (U) 4 to 6, more (V) 6 to 10. These are from two public data pages on ceramics, seen
     * second-hand; what lies between R and U (S and T) is taken as U, on the safe side, our choice.
     */
    public Band usualAgeingPercent() {
        double widest = Math.max(-least, most);
        return classOne ? Band.exactly(0) : widest <= 15 ? new Band(1, 2.5, 4) : widest <= 56 ? new Band(4, 5, 6) : new Band(6, 8, 10);
    }
}
