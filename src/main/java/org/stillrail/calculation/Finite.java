package org.stillrail.calculation;

/** Numbers for answers, which hold no infinity and no NaN. */
final class Finite {

    private Finite() {
    }

    static Double orNull(double value) {
        return Double.isFinite(value) ? value : null;
    }
}
