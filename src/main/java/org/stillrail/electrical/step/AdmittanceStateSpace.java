package org.stillrail.electrical.step;

import java.util.Arrays;

/**
 * A branch in time: its current for a given voltage.
 *
 * <pre>
 * dx/dt = A x + b v        i = c x + d v + e dv/dt
 * </pre>
 *
 * with n states (n may be 0), conductance {@code d} and capacitance {@code e} zero or positive. At rest every state is 0, and
 * v and i are deviations from a DC operating point. Arrays are copied on the way in.
 */
public final class AdmittanceStateSpace {

    private final double[][] a;
    private final double[] b;
    private final double[] c;
    private final double d;
    private final double e;

    private AdmittanceStateSpace(double[][] a, double[] b, double[] c, double d, double e) {
        this.a = a;
        this.b = b;
        this.c = c;
        this.d = d;
        this.e = e;
    }

    /**
     * From an admittance {@code Y(s) = c (sI - A)^-1 b + d + s e}.
     *
     * @param a n rows of n
     * @param b length n
     * @param c length n
     */
    public static AdmittanceStateSpace ofAdmittance(double[][] a, double[] b, double[] c, double d, double e) {
        requireShape(a, b, c);
        if (!(d >= 0) || !(e >= 0)) {
            throw new IllegalArgumentException("A passive admittance has no negative conductance or capacitance, not "
                    + d + " S and " + e + " F");
        }
        return new AdmittanceStateSpace(copy(a), b.clone(), c.clone(), d, e);
    }

    /**
     * From an impedance {@code Z(s) = c (sI - A)^-1 b + d + s inductanceH}, turned round. A capacitor in series is a pole at 0.
     *
     * @throws IllegalArgumentException for an impedance that is 0 at infinity faster than a capacitor's
     */
    public static AdmittanceStateSpace ofImpedance(double[][] a, double[] b, double[] c, double d, double inductanceH) {
        requireShape(a, b, c);
        if (!(d >= 0) || !(inductanceH >= 0)) {
            throw new IllegalArgumentException("A passive impedance has no negative resistance or inductance at infinity, not "
                    + d + " ohm and " + inductanceH + " H");
        }
        if (inductanceH > 0) {
            return behindInductor(a, b, c, d, inductanceH);
        }
        return d > 0 ? behindResistor(a, b, c, d) : capacitive(a, b, c);
    }

    /** Capacitance, resistance and inductance in series; the last two may be 0. */
    public static AdmittanceStateSpace seriesRlc(double capacitanceF, double resistanceOhm, double inductanceH) {
        return ofImpedance(new double[][] {{0}}, new double[] {1 / capacitanceF}, new double[] {1}, resistanceOhm, inductanceH);
    }

    int states() {
        return b.length;
    }

    double a(int row, int column) {
        return a[row][column];
    }

    double b(int row) {
        return b[row];
    }

    double c(int column) {
        return c[column];
    }

    double conductance() {
        return d;
    }

    double capacitance() {
        return e;
    }

    /** The inductor's current is a state: {@code L di/dt = v - d i - c x}, {@code dx/dt = A x + b i}. */
    private static AdmittanceStateSpace behindInductor(double[][] a, double[] b, double[] c, double d, double inductanceH) {
        int n = b.length;
        double[][] m = new double[n + 1][n + 1];
        m[0][0] = -d / inductanceH;
        for (int k = 0; k < n; k++) {
            m[0][k + 1] = -c[k] / inductanceH;
            m[k + 1][0] = b[k];
            System.arraycopy(a[k], 0, m[k + 1], 1, n);
        }
        double[] input = new double[n + 1];
        input[0] = 1 / inductanceH;
        double[] output = new double[n + 1];
        output[0] = 1;
        return new AdmittanceStateSpace(m, input, output, 0, 0);
    }

    /** {@code i = (v - c x) / d}. */
    private static AdmittanceStateSpace behindResistor(double[][] a, double[] b, double[] c, double d) {
        int n = b.length;
        double[][] m = copy(a);
        double[] input = new double[n];
        double[] output = new double[n];
        for (int row = 0; row < n; row++) {
            for (int k = 0; k < n; k++) {
                m[row][k] -= b[row] * c[k] / d;
            }
            input[row] = b[row] / d;
            output[row] = -c[row] / d;
        }
        return new AdmittanceStateSpace(m, input, output, 1 / d, 0);
    }

    /**
     * No resistance or inductance at infinity: {@code v = c x} makes v one of the states. The one with the largest weight
     * is given up for it, and {@code i = (dv/dt - c A x) / (c b)} is eliminated; the others are shifted by {@code b v / (c b)} so
     * that dv/dt leaves their equations.
     */
    private static AdmittanceStateSpace capacitive(double[][] a, double[] b, double[] c) {
        int n = b.length;
        double cb = dot(c, b);
        if (!(cb > 0)) {
            throw new IllegalArgumentException("An impedance without resistance, inductance or capacitance at infinity has no"
                    + " admittance here");
        }
        int pivot = 0;
        for (int k = 1; k < n; k++) {
            pivot = Math.abs(c[k]) > Math.abs(c[pivot]) ? k : pivot;
        }
        // x = xi P + v q: row of P for the pivot comes from v = c x.
        double[][] p = new double[n][n - 1];
        double[] q = new double[n];
        q[pivot] = 1 / c[pivot];
        for (int row = 0, column = 0; row < n; row++) {
            if (row != pivot) {
                p[row][column] = 1;
                p[pivot][column] = -c[row] / c[pivot];
                q[row] = b[row] / cb;
                q[pivot] -= c[row] / c[pivot] * b[row] / cb;
                column++;
            }
        }
        double[] ca = new double[n];
        for (int k = 0; k < n; k++) {
            for (int row = 0; row < n; row++) {
                ca[k] += c[row] * a[row][k];
            }
        }
        double[][] m = new double[n - 1][n - 1];
        double[] input = new double[n - 1];
        double[] output = new double[n - 1];
        for (int column = 0; column < n - 1; column++) {
            double through = 0;
            for (int k = 0; k < n; k++) {
                through += ca[k] * p[k][column];
            }
            output[column] = -through / cb;
        }
        double throughV = dot(ca, q);
        for (int row = 0, kept = 0; row < n; row++) {
            if (row == pivot) {
                continue;
            }
            for (int column = 0; column < n - 1; column++) {
                double sum = b[row] * output[column];
                for (int k = 0; k < n; k++) {
                    sum += a[row][k] * p[k][column];
                }
                m[kept][column] = sum;
            }
            input[kept] = dot(a[row], q) - b[row] * throughV / cb;
            kept++;
        }
        return new AdmittanceStateSpace(m, input, output, -throughV / cb, 1 / cb);
    }

    private static double dot(double[] x, double[] y) {
        double sum = 0;
        for (int k = 0; k < x.length; k++) {
            sum += x[k] * y[k];
        }
        return sum;
    }

    private static void requireShape(double[][] a, double[] b, double[] c) {
        if (a.length != b.length || c.length != b.length || Arrays.stream(a).anyMatch(row -> row.length != b.length)) {
            throw new IllegalArgumentException("A state space of " + b.length + " states needs a square matrix and two vectors"
                    + " of that size");
        }
    }

    private static double[][] copy(double[][] a) {
        return Arrays.stream(a).map(double[]::clone).toArray(double[][]::new);
    }
}
