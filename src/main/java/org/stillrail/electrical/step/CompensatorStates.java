package org.stillrail.electrical.step;

import java.util.List;
import org.stillrail.electrical.converter.Compensator;

/**
 * A compensator as an integrator in parallel with all the rest, so that the integrator alone can be held:
 *
 * <pre>
 * C(s) = k / s + feedthrough + sum of weight[m] / ((1 + s/p1) .. (1 + s/pm))
 * </pre>
 *
 * The rest is a chain of first-order lags, {@code dx1/dt = p1 (e - x1)}, {@code dx2/dt = p2 (x1 - x2)} and so on, which takes
 * repeated poles as they come. Its weights follow from dividing {@code (product of zeros - product of poles) / s} by one pole
 * after the other.
 */
final class CompensatorStates {

    private final double integratorGain;
    private final double[] poles;
    private final double[] weights;
    private final double feedthrough;

    /** @param scale what the compensator's output is multiplied by */
    CompensatorStates(Compensator compensator, double scale) {
        this.integratorGain = compensator.gain() * scale;
        int n = compensator.polesHz().size();
        this.poles = new double[n];
        for (int m = 0; m < n; m++) {
            poles[m] = 2 * Math.PI * compensator.polesHz().get(m);
        }
        double unit = unitOmega(compensator);
        double[] zeros = product(compensator.zerosHz(), unit, n + 1);
        double[] lags = product(compensator.polesHz(), unit, n + 1);
        double[] rest = new double[n + 1];
        for (int k = 0; k <= n; k++) {
            rest[k] = zeros[k + 1] - lags[k + 1];
        }
        this.weights = new double[n];
        for (int m = n - 1; m >= 0; m--) {
            // rest = weight + (1 + u/p) quotient, by Horner at u = -p
            double p = poles[m] / unit;
            double[] quotient = new double[n + 1];
            double carry = 0;
            for (int k = n; k > 0; k--) {
                carry = rest[k] - p * carry;
                quotient[k - 1] = carry * p;
                // Horner's quotient belongs to (u + p); (1 + u/p) is 1/p of it
            }
            weights[m] = (rest[0] - p * carry) * integratorGain / unit;
            rest = quotient;
        }
        this.feedthrough = rest[0] * integratorGain / unit;
    }

    double integratorGain() {
        return integratorGain;
    }

    int lags() {
        return poles.length;
    }

    double pole(int m) {
        return poles[m];
    }

    double weight(int m) {
        return weights[m];
    }

    double feedthrough() {
        return feedthrough;
    }

    /** A frequency in the middle of the zeros and poles keeps the polynomials' coefficients near each other. */
    private static double unitOmega(Compensator compensator) {
        double sum = 0;
        for (double hz : compensator.zerosHz()) {
            sum += Math.log(hz);
        }
        for (double hz : compensator.polesHz()) {
            sum += Math.log(hz);
        }
        int count = compensator.zerosHz().size() + compensator.polesHz().size();
        return 2 * Math.PI * (count == 0 ? 1 : Math.exp(sum / count));
    }

    /** Coefficients, ascending, of product(1 + u unit / w), up to the given degree. */
    private static double[] product(List<Double> hz, double unit, int degree) {
        double[] coefficients = new double[degree + 1];
        coefficients[0] = 1;
        for (double f : hz) {
            double ratio = unit / (2 * Math.PI * f);
            for (int k = degree; k > 0; k--) {
                coefficients[k] += ratio * coefficients[k - 1];
            }
        }
        return coefficients;
    }
}
