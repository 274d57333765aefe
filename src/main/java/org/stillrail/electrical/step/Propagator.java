package org.stillrail.electrical.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Steps {@code dz/dt = M z} by the matrix exponential, so that stiffness costs nothing. {@code exp(M h) - I} is kept for steps of
 * powers of two of a second, each from the one below by {@code F2 = 2 F + F F}, which keeps the digits of slow modes beside
 * fast ones; below the shortest a Taylor series is summed. All matrices are kept by columns, each padded to whole blocks of rows, so that
 * a product works out a block of rows at once without going back to memory for their sums.
 */
final class Propagator {

    /**
     * A step times the norm that a Taylor series covers to the last digit. Steps after a jump begin at about 1 over the norm and often stay
     * there, so the kept steps reach well below it: one product each instead of a series.
     */
    private static final double SHORT = 1.0 / 32;
    /** The next one would be below 1e-21 of the state. */
    private static final int TERMS = 10;
    /** Rows that a product works out at once. */
    private static final int BLOCK = 4;
    private static final int BALANCING_SWEEPS = 12;

    private final int n;
    /** Rows with those that are always 0. */
    private final int padded;
    /** Of M, as given. */
    private final double[] rows;
    /** By columns. */
    private final double[] m;
    private final double norm;
    private final int shortestExponent;
    private final List<double[]> increments = new ArrayList<>();
    private final double[] term;
    private final double[] next;

    /** @param m n rows of n, row by row; kept */
    Propagator(double[] m, int n) {
        this.n = n;
        this.rows = m;
        this.padded = (n + BLOCK - 1) / BLOCK * BLOCK;
        this.m = byColumns();
        this.norm = balancedNorm(m, n);
        this.shortestExponent = norm == 0 ? 1023 : Math.getExponent(SHORT / norm);
        this.term = new double[n];
        this.next = new double[padded];
    }

    /** A copy of M, row by row. */
    double[] matrix() {
        return rows.clone();
    }

    /** About the time constant of the fastest mode, in s; positive infinity where nothing moves. */
    double fastestS() {
        return 1 / norm;
    }

    /** Advances the state by any positive time, in place. */
    void advance(double[] z, double h) {
        double left = h;
        while (left * norm > SHORT) {
            int exponent = Math.getExponent(left);
            addProduct(increment(exponent), z);
            left -= Math.scalb(1.0, exponent);
        }
        if (left > 0) {
            taylor(z, left);
        }
    }

    private void addProduct(double[] matrix, double[] z) {
        product(matrix, z, 0, next, 0);
        for (int row = 0; row < n; row++) {
            z[row] += next[row];
        }
    }

    private void taylor(double[] z, double h) {
        System.arraycopy(z, 0, term, 0, n);
        double size = 1;
        for (int k = 1; k <= TERMS && size > 1e-18; k++) {
            product(m, term, 0, next, 0);
            for (int row = 0; row < n; row++) {
                term[row] = next[row] * (h / k);
                z[row] += term[row];
            }
            size *= norm * h / k;
        }
    }

    /** Matrix times the n numbers of {@code vector} from {@code vectorAt} on, into {@code to} from {@code toAt} on. */
    private void product(double[] matrix, double[] vector, int vectorAt, double[] to, int toAt) {
        for (int row = 0; row < padded; row += BLOCK) {
            double sum0 = 0;
            double sum1 = 0;
            double sum2 = 0;
            double sum3 = 0;
            int at = row;
            for (int column = 0; column < n; column++) {
                double factor = vector[vectorAt + column];
                sum0 += matrix[at] * factor;
                sum1 += matrix[at + 1] * factor;
                sum2 += matrix[at + 2] * factor;
                sum3 += matrix[at + 3] * factor;
                at += padded;
            }
            to[toAt + row] = sum0;
            to[toAt + row + 1] = sum1;
            to[toAt + row + 2] = sum2;
            to[toAt + row + 3] = sum3;
        }
    }

    private double[] increment(int exponent) {
        int index = exponent - shortestExponent;
        while (increments.size() <= index) {
            increments.add(increments.isEmpty() ? shortest() : doubled(increments.get(increments.size() - 1)));
        }
        return increments.get(index);
    }

    /** {@code exp(M h) - I} for the shortest step, by Horner. */
    private double[] shortest() {
        double h = Math.scalb(1.0, shortestExponent);
        double[] sum = new double[n * padded];
        for (int k = TERMS; k >= 1; k--) {
            // sum = (h M / k) (I + sum)
            double[] product = multiply(m, sum);
            for (int at = 0; at < sum.length; at++) {
                sum[at] = (m[at] + product[at]) * (h / k);
            }
        }
        return sum;
    }

    private double[] doubled(double[] f) {
        double[] square = multiply(f, f);
        for (int at = 0; at < square.length; at++) {
            square[at] += 2 * f[at];
        }
        return square;
    }

    /** Both are functions of M, so their order does not matter. */
    private double[] multiply(double[] x, double[] y) {
        double[] product = new double[n * padded];
        for (int column = 0; column < n; column++) {
            product(x, y, column * padded, product, column * padded);
        }
        return product;
    }

    private double[] byColumns() {
        double[] columns = new double[n * padded];
        for (int row = 0; row < n; row++) {
            for (int column = 0; column < n; column++) {
                columns[column * padded + row] = rows[row * n + column];
            }
        }
        return columns;
    }

    /** The norm after balancing. A state that nothing drives (a constant input) may be scaled at will and is left out. */
    private static double balancedNorm(double[] m, int n) {
        double[] scale = balance(m, n);
        double norm = 0;
        for (int i = 0; i < n; i++) {
            double row = 0;
            for (int k = 0; k < n; k++) {
                if (driven(m, n, k)) {
                    row += Math.abs(m[i * n + k]) * scale[k] / scale[i];
                }
            }
            norm = Math.max(norm, row);
        }
        return norm;
    }

    /**
     * Units for the states, powers of two, in which rows and columns weigh alike (Parlett and Reinsch, from memory). Such a
     * scaling changes no digit of the products above, so only the norm in it is wanted.
     */
    static double[] balance(double[] m, int n) {
        double[] scale = new double[n];
        Arrays.fill(scale, 1);
        for (int sweep = 0; sweep < BALANCING_SWEEPS; sweep++) {
            boolean changed = false;
            for (int i = 0; i < n; i++) {
                double row = 0;
                double column = 0;
                for (int k = 0; k < n; k++) {
                    if (k != i) {
                        row += Math.abs(m[i * n + k]) * scale[k] / scale[i];
                        column += Math.abs(m[k * n + i]) * scale[i] / scale[k];
                    }
                }
                if (row > 0 && column > 0) {
                    int half = Math.getExponent(row / column) / 2;
                    if (half != 0) {
                        scale[i] = Math.scalb(scale[i], half);
                        changed = true;
                    }
                }
            }
            if (!changed) {
                break;
            }
        }
        return scale;
    }

    private static boolean driven(double[] m, int n, int state) {
        for (int k = 0; k < n; k++) {
            if (m[state * n + k] != 0) {
                return true;
            }
        }
        return false;
    }
}
