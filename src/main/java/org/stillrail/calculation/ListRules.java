package org.stillrail.calculation;

/** Rules for lists of numbers; a list that is null has been refused before and passes. */
final class ListRules {

    private ListRules() {
    }

    /** Positive and strictly increasing; names the first place that breaks the rule. */
    static void increasing(String path, double[] values, String unit, FieldProblems problems) {
        if (values == null) {
            return;
        }
        for (int i = 0; i < values.length; i++) {
            if (i == 0 && !(values[i] > 0)) {
                problems.add(FieldProblems.path(path, i), "must be above 0");
                return;
            }
            if (i > 0 && !(values[i] > values[i - 1])) {
                problems.add(FieldProblems.path(path, i), notAbove(values[i], values[i - 1], unit));
                return;
            }
        }
    }

    /** Starts at 0 and is strictly increasing. */
    static void increasingFromZero(String path, double[] values, String unit, FieldProblems problems) {
        if (values == null) {
            return;
        }
        for (int i = 0; i < values.length; i++) {
            if (i == 0 && values[i] != 0) {
                problems.add(FieldProblems.path(path, i), "must be 0, the beginning of the period");
                return;
            }
            if (i > 0 && !(values[i] > values[i - 1])) {
                problems.add(FieldProblems.path(path, i), notAbove(values[i], values[i - 1], unit));
                return;
            }
        }
    }

    private static String notAbove(double value, double previous, String unit) {
        return "must be above the entry before it, but " + value + " " + unit + " follows " + previous + " " + unit;
    }

    static void sameLength(String path, double[] values, String otherName, double[] other, FieldProblems problems) {
        if (values != null && other != null && values.length != other.length) {
            problems.add(path, "has " + values.length + " entries where " + otherName + " has " + other.length);
        }
    }

    static void notNegative(String path, double[] values, FieldProblems problems) {
        check(path, values, 0, "must be 0 or above", problems);
    }

    static void positive(String path, double[] values, FieldProblems problems) {
        check(path, values, Double.MIN_VALUE, "must be above 0", problems);
    }

    private static void check(String path, double[] values, double least, String message, FieldProblems problems) {
        if (values == null) {
            return;
        }
        for (int i = 0; i < values.length; i++) {
            if (values[i] < least) {
                problems.add(FieldProblems.path(path, i), message);
            }
        }
    }
}
