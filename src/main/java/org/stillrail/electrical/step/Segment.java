package org.stillrail.electrical.step;

import java.util.stream.DoubleStream;

/** A cubic over one interval from value and rate at both ends (Hermite). */
record Segment(double startS, double lengthS, double value0, double rate0, double value1, double rate1) {

    double endS() {
        return startS + lengthS;
    }

    /** @param fraction 0 at the start, 1 at the end */
    double at(double fraction) {
        double f = fraction;
        double g = 1 - f;
        return g * g * ((1 + 2 * f) * value0 + f * lengthS * rate0) + f * f * ((1 + 2 * g) * value1 - g * lengthS * rate1);
    }

    /** The share of a cubic's largest miss, in its middle, that shows elsewhere: the miss goes with the square of the way to either end. */
    static double missShownAt(double fraction) {
        double fromEnds = 4 * fraction * (1 - fraction);
        return fromEnds * fromEnds;
    }

    double rateAt(double fraction) {
        double f = fraction;
        double slope = (value1 - value0) / lengthS;
        return (1 - f) * (1 - 3 * f) * rate0 + f * (3 * f - 2) * rate1 + 6 * f * (1 - f) * slope;
    }

    /** Interior fractions where the rate is zero, ascending; empty where there are none. */
    double[] turningFractions() {
        double slope3 = 3 * (value1 - value0) / lengthS;
        double qa = 3 * (rate0 + rate1) - 2 * slope3;
        double qb = -2 * (2 * rate0 + rate1 - slope3);
        double qc = rate0;
        double discriminant = qb * qb - 4 * qa * qc;
        if (!(discriminant >= 0)) {
            return new double[0];
        }
        double q = -(qb + Math.copySign(Math.sqrt(discriminant), qb)) / 2;
        double first = q / qa;
        double second = qc / q;
        return DoubleStream.of(Math.min(first, second), Math.max(first, second))
                .filter(f -> f > 0 && f < 1).distinct().toArray();
    }
}
