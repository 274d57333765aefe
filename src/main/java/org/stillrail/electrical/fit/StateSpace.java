package org.stillrail.electrical.fit;

import org.stillrail.electrical.curve.Complex;

/**
 * One input {@code u}, one output {@code y}: {@code x' = A x + B u}, {@code y = C x + D u + E u'}. For an impedance the
 * input is the current and the output the voltage, so E is an inductance in series and D a resistance.
 *
 * <p>A is block diagonal, real: {@code [p]} with {@code B = 1}, {@code C = r} for a real pole, and for a pair
 * {@code a +- jb} with residues {@code c +- jd} the block {@code [[a, b], [-b, a]]} with {@code B = (2, 0)},
 * {@code C = (c, d)} (B. Gustavsen and A. Semlyen, IEEE Trans. Power Delivery 14(3), 1999, appendix B; from memory).
 *
 * @param a square, row by row
 * @param b one per state
 * @param c one per state
 * @param d direct term
 * @param e term of the input's derivative
 */
public record StateSpace(double[][] a, double[] b, double[] c, double d, double e) {

    static StateSpace of(RationalFunction function) {
        int order = function.order();
        double[][] a = new double[order][order];
        double[] b = new double[order];
        double[] c = new double[order];
        int row = 0;
        if (function.residueAtZero() != 0) {
            b[0] = 1;
            c[0] = function.residueAtZero();
            row = 1;
        }
        for (int k = 0; k < function.entries(); k++) {
            a[row][row] = function.poleRe(k);
            c[row] = function.residueRe(k);
            if (function.poleIm(k) == 0) {
                b[row] = 1;
                row += 1;
            } else {
                a[row + 1][row + 1] = function.poleRe(k);
                a[row][row + 1] = function.poleIm(k);
                a[row + 1][row] = -function.poleIm(k);
                b[row] = 2;
                c[row + 1] = function.residueIm(k);
                row += 2;
            }
        }
        return new StateSpace(a, b, c, function.constant(), function.proportional());
    }

    /** Of {@code count} equal impedances in parallel, with a resistance in ohm and an inductance in H in series with them all. */
    public StateSpace inBranch(int count, double seriesResistanceOhm, double seriesInductanceH) {
        double[] shared = c.clone();
        for (int k = 0; k < shared.length; k++) {
            shared[k] /= count;
        }
        return new StateSpace(a, b, shared, d / count + seriesResistanceOhm, e / count + seriesInductanceH);
    }

    public int order() {
        return b.length;
    }

    /** {@code C (j omega I - A)^-1 B + D + j omega E}, block by block. */
    Complex at(double omega) {
        Complex sum = new Complex(d, omega * e);
        int row = 0;
        while (row < b.length) {
            boolean pair = row + 1 < b.length && a[row][row + 1] != 0;
            Complex s = new Complex(-a[row][row], omega);
            if (pair) {
                double beta = a[row][row + 1];
                Complex determinant = s.times(s).plus(new Complex(beta * beta, 0));
                Complex adjugate = s.times(c[row]).plus(new Complex(-c[row + 1] * beta, 0));
                sum = sum.plus(adjugate.times(b[row]).over(determinant));
            } else {
                sum = sum.plus(new Complex(c[row] * b[row], 0).over(s));
            }
            row += pair ? 2 : 1;
        }
        return sum;
    }
}
