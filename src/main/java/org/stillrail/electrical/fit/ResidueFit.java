package org.stillrail.electrical.fit;

import java.util.Arrays;
import org.stillrail.electrical.fit.PartialFractions.Terms;

/**
 * Residues, constant, slope and the residue at 0 for given poles: weighted linear least squares. An inductance or a
 * capacitance in series that would come out negative is left out, for no passive part has one.
 */
final class ResidueFit {

    final PoleSet poles;
    final Terms terms;
    final double[] coefficients;
    /** Factor R of the weighted columns: {@code |R x|} is the weighted change of the curve that a change x of the coefficients makes. */
    final Triangle triangle;
    final FitError error;

    private ResidueFit(PoleSet poles, Terms terms, double[] coefficients, Triangle triangle, FitError error) {
        this.poles = poles;
        this.terms = terms;
        this.coefficients = coefficients;
        this.triangle = triangle;
        this.error = error;
    }

    static ResidueFit of(Samples samples, PoleSet poles, Terms wanted) {
        ResidueFit fit = ofAnySign(samples, poles, wanted);
        int column = poles.order() + 1;
        boolean slope = wanted.slope() && fit.coefficients[column++] > 0;
        boolean zero = wanted.poleAtZero() && fit.coefficients[column] > 0;
        return slope == wanted.slope() && zero == wanted.poleAtZero() ? fit : of(samples, poles, new Terms(slope, zero));
    }

    /** Inductance and residue at 0 as the points have them, negative too. */
    static ResidueFit ofAnySign(Samples samples, PoleSet poles, Terms terms) {
        PartialFractions basis = new PartialFractions(samples.omega, poles, terms);
        int n = samples.size();
        int columns = basis.columns();
        double[][] equations = new double[columns + 1][2 * n];
        for (int k = 0; k < columns; k++) {
            PoleRelocation.weigh(samples, basis.re[k], basis.im[k], equations[k]);
        }
        PoleRelocation.weigh(samples, samples.re, samples.im, equations[columns]);
        Triangle triangle = Triangle.of(equations);
        double[] x = triangle.solve(0, columns, columns);
        return new ResidueFit(poles, terms, x, triangle, FitError.of(samples, basis, x));
    }

    /** The same poles with other coefficients. */
    ResidueFit with(Samples samples, double[] changed) {
        return new ResidueFit(poles, terms, changed.clone(), triangle,
                FitError.of(samples, new PartialFractions(samples.omega, poles, terms), changed));
    }

    /** Number of poles, the one at 0 included. */
    int order() {
        return poles.order() + (terms.poleAtZero() ? 1 : 0);
    }

    /** In the samples' own frequency unit. */
    RationalFunction function() {
        return function(coefficients);
    }

    RationalFunction function(double[] x) {
        int entries = poles.entries();
        double[] residueRe = new double[entries];
        double[] residueIm = new double[entries];
        int column = 0;
        for (int k = 0; k < entries; k++) {
            residueRe[k] = x[column];
            if (poles.im[k] == 0) {
                column += 1;
            } else {
                residueIm[k] = x[column + 1];
                column += 2;
            }
        }
        double constant = x[column++];
        double slope = terms.slope() ? x[column++] : 0;
        double atZero = terms.poleAtZero() ? x[column] : 0;
        return new RationalFunction(Arrays.copyOf(poles.re, entries), Arrays.copyOf(poles.im, entries), residueRe, residueIm,
                atZero, constant, slope);
    }
}
