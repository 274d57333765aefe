package org.stillrail.electrical.fit;

import org.stillrail.electrical.Interruption;

/**
 * One step of vector fitting. With trial poles a, {@code sigma(s) = d~ + sum c~/(s - a)} and {@code sigma F} both in
 * partial fractions on a, the linear least squares
 * {@code sum c/(s - a) + d + s h + k/s - F sigma = 0} give sigma, and its zeros, the eigenvalues of
 * {@code A - b c~' / d~}, are the next poles.
 *
 * <p>d~ is free, and the trivial solution is kept out by one row that asks for {@code sum over the points of Re sigma} to be
 * their number. Only sigma is wanted, so only the last block of the triangular factor is solved.
 *
 * <p>Sources: B. Gustavsen, A. Semlyen, IEEE Trans. Power Delivery 14(3), 1999; B. Gustavsen, same journal 21(3), 2006
 * (relaxed non-triviality); D. Deschrijver et al., IEEE Microwave and Wireless Components Letters 18(6), 2008 (only the
 * last block). All from memory.
 */
final class PoleRelocation {

    /** Below this d~ the division would throw the poles far away; the step is then done with d~ fixed. */
    private static final double LEAST_DIRECT = 1e-8;

    private PoleRelocation() {
    }

    /** @return the relocated, stable poles, as many as before */
    static PoleSet step(Samples samples, PoleSet poles, PartialFractions basis) {
        Interruption.check();
        int n = samples.size();
        int order = basis.poleColumns;
        int first = basis.columns();
        Triangle triangle = Triangle.of(equations(samples, basis));

        double[][] small = new double[order + 2][order + 2];
        for (int column = 0; column <= order; column++) {
            for (int row = 0; row <= column; row++) {
                small[column][row] = triangle.r(first + row, first + column);
            }
        }
        double rowWeight = relaxationWeight(samples) / n;
        for (int column = 0; column < order; column++) {
            double sum = 0;
            for (double value : basis.re[column]) {
                sum += value;
            }
            small[column][order + 1] = rowWeight * sum;
        }
        small[order][order + 1] = rowWeight * n;
        small[order + 1][order + 1] = rowWeight * n;
        double[] sigma = Triangle.of(small).solve(0, order + 1, order + 1);
        double direct = sigma[order];
        if (Math.abs(direct) < LEAST_DIRECT) {
            direct = Math.copySign(LEAST_DIRECT, direct);
            sigma = solveWithDirect(triangle, first, order, direct);
        }
        return zeros(poles, sigma, direct, samples.omega);
    }

    private static double relaxationWeight(Samples samples) {
        double sum = 0;
        for (int i = 0; i < samples.size(); i++) {
            double re = samples.re[i] * samples.weightRe[i];
            double im = samples.im[i] * samples.weightIm[i];
            sum += re * re + im * im;
        }
        return Math.sqrt(sum);
    }

    /** Columns of the weighted equations: real parts first, then imaginary parts. */
    private static double[][] equations(Samples samples, PartialFractions basis) {
        int n = samples.size();
        int first = basis.columns();
        double[] wr = samples.weightRe;
        double[] wi = samples.weightIm;
        double[][] columns = new double[first + basis.poleColumns + 1][2 * n];
        for (int k = 0; k < first; k++) {
            weigh(samples, basis.re[k], basis.im[k], columns[k]);
        }
        for (int k = 0; k <= basis.poleColumns; k++) {
            double[] column = columns[first + k];
            double[] re = basis.re[k];
            double[] im = basis.im[k];
            for (int i = 0; i < n; i++) {
                column[i] = -wr[i] * (samples.re[i] * re[i] - samples.im[i] * im[i]);
                column[n + i] = -wi[i] * (samples.re[i] * im[i] + samples.im[i] * re[i]);
            }
        }
        return columns;
    }

    static void weigh(Samples samples, double[] re, double[] im, double[] column) {
        int n = samples.size();
        for (int i = 0; i < n; i++) {
            column[i] = samples.weightRe[i] * re[i];
            column[n + i] = samples.weightIm[i] * im[i];
        }
    }

    /** The step of 1999: d~ is given. */
    private static double[] solveWithDirect(Triangle triangle, int first, int order, double direct) {
        double[][] fixed = new double[order + 1][order + 1];
        for (int column = 0; column <= order; column++) {
            for (int row = 0; row <= column; row++) {
                fixed[column][row] = triangle.r(first + row, first + column) * (column == order ? -direct : 1);
            }
        }
        return Triangle.of(fixed).solve(0, order, order);
    }

    /** Eigenvalues of {@code A - b c' / d}. */
    private static PoleSet zeros(PoleSet poles, double[] sigma, double direct, double[] omega) {
        int order = poles.order();
        double[] b = new double[order];
        double[] c = new double[order];
        System.arraycopy(sigma, 0, c, 0, order);
        int row = 0;
        for (int k = 0; k < poles.entries(); k++) {
            boolean pair = poles.im[k] != 0;
            b[row] = pair ? 2 : 1;
            row += pair ? 2 : 1;
        }
        return PoleSet.tamed(DiagonalPlusRankOne.upperEigenvalues(poles.re, poles.im, b, c, -1 / direct),
                omega[0], omega[omega.length - 1]);
    }
}
