package org.stillrail.electrical.fit;

/**
 * The basis functions of vector fitting at {@code s = j omega}: {@code 1/(s - p)} for a real pole; for a pair
 * {@code 1/(s - p) + 1/(s - p*)} and {@code j/(s - p) - j/(s - p*)}, whose coefficients are the real and the imaginary
 * part of the residue; then 1, s, and {@code 1/s} where a pole at 0 is wanted.
 *
 * <p>Column k of {@link #re} and {@link #im} is a basis function at each frequency.
 */
final class PartialFractions {

    final double[][] re;
    final double[][] im;
    final int poleColumns;
    /** Column of the slope s, of the pole at 0: -1 where left out. */
    final int slopeColumn;
    final int zeroColumn;

    PartialFractions(double[] omega, PoleSet poles, Terms terms) {
        int n = omega.length;
        poleColumns = poles.order();
        int columns = poleColumns + 1;
        slopeColumn = terms.slope() ? columns++ : -1;
        zeroColumn = terms.poleAtZero() ? columns++ : -1;
        re = new double[columns][n];
        im = new double[columns][n];
        int column = 0;
        for (int k = 0; k < poles.entries(); k++) {
            if (poles.im[k] == 0) {
                real(omega, poles.re[k], re[column], im[column]);
                column += 1;
            } else {
                pair(omega, poles.re[k], poles.im[k], re[column], im[column], re[column + 1], im[column + 1]);
                column += 2;
            }
        }
        for (int i = 0; i < n; i++) {
            re[poleColumns][i] = 1;
            if (slopeColumn >= 0) {
                im[slopeColumn][i] = omega[i];
            }
            if (zeroColumn >= 0) {
                im[zeroColumn][i] = -1 / omega[i];
            }
        }
    }

    int columns() {
        return re.length;
    }

    private static void real(double[] omega, double pole, double[] re, double[] im) {
        for (int i = 0; i < omega.length; i++) {
            double square = omega[i] * omega[i] + pole * pole;
            re[i] = -pole / square;
            im[i] = -omega[i] / square;
        }
    }

    private static void pair(double[] omega, double a, double b, double[] re1, double[] im1, double[] re2, double[] im2) {
        for (int i = 0; i < omega.length; i++) {
            double below = omega[i] - b;
            double above = omega[i] + b;
            double squareBelow = a * a + below * below;
            double squareAbove = a * a + above * above;
            double lowRe = -a / squareBelow;
            double lowIm = -below / squareBelow;
            double highRe = -a / squareAbove;
            double highIm = -above / squareAbove;
            re1[i] = lowRe + highRe;
            im1[i] = lowIm + highIm;
            re2[i] = highIm - lowIm;
            im2[i] = lowRe - highRe;
        }
    }

    /** Which terms stand beside the free poles and the constant. */
    record Terms(boolean slope, boolean poleAtZero) {
    }
}
