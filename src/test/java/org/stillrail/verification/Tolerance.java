package org.stillrail.verification;

/** How far a result may lie from what is expected. */
record Tolerance(double size, Kind kind, String unit) {

    enum Kind { EXACT, RELATIVE, OF_LARGEST, ABSOLUTE }

    static final Tolerance EXACT = new Tolerance(0, Kind.EXACT, "");

    /** The absolute tolerance that this is for a list whose largest value is known. */
    Tolerance forLargest(double largest) {
        return kind == Kind.OF_LARGEST ? new Tolerance(size * largest, Kind.ABSOLUTE, unit) : this;
    }

    /** The error as a multiple of what is allowed; above 1 the check fails. Two equal values never fail, whatever is allowed. */
    double share(double expected, double got) {
        if (expected == got) {
            return 0;
        }
        double share = Math.abs(got - expected) / (kind == Kind.RELATIVE ? size * Math.abs(expected) : size);
        return Double.isNaN(share) ? Double.POSITIVE_INFINITY : share;
    }

    /** The error in the terms of the tolerance: relative or absolute. */
    double error(double expected, double got) {
        double difference = Math.abs(got - expected);
        return kind == Kind.RELATIVE && difference > 0 ? difference / Math.abs(expected) : difference;
    }

    String words() {
        return switch (kind) {
            case EXACT -> "exact";
            case RELATIVE -> size >= 1e-4 ? Figures.words(100 * size) + " %" : Figures.words(size) + " of the value";
            case OF_LARGEST -> Figures.words(100 * size) + " % of the largest";
            case ABSOLUTE -> Figures.words(size, unit);
        };
    }
}
