package org.stillrail.electrical.fit;

import java.util.List;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.verification.Source;

/** The synthetic 18-pole function of the vector-fitting literature. Poles and residues before the factor 2 pi. */
final class PublishedFunction {

    static final Source SOURCE = Source.seenSecondHand(
            "example script by B. Gustavsen for the method of B. Gustavsen, A. Semlyen, IEEE Trans. Power Delivery 14(3), 1999");

    static final double[][] POLES = {
        {-4500, 0}, {-41000, 0}, {-100, 5000}, {-120, 15000}, {-3000, 35000}, {-200, 45000}, {-1500, 45000}, {-500, 70000},
        {-1000, 73000}, {-2000, 90000}};
    static final double[][] RESIDUES = {
        {-3000, 0}, {-83000, 0}, {-5, 7000}, {-20, 18000}, {6000, 45000}, {40, 60000}, {90, 10000}, {50000, 80000},
        {1000, 45000}, {-5000, 92000}};
    static final double CONSTANT = 0.2;
    static final double PROPORTIONAL = 2e-5;

    private PublishedFunction() {
    }

    /** Terms {@code from .. to - 1} of the lists above, all times {@code factor}. */
    static RationalFunction terms(int from, int to, double factor, double constant, double proportional) {
        int n = to - from;
        double[][] columns = new double[4][n];
        for (int k = 0; k < n; k++) {
            columns[0][k] = factor * POLES[from + k][0];
            columns[1][k] = factor * POLES[from + k][1];
            columns[2][k] = factor * RESIDUES[from + k][0];
            columns[3][k] = factor * RESIDUES[from + k][1];
        }
        return new RationalFunction(columns[0], columns[1], columns[2], columns[3], 0, constant, proportional);
    }

    static RationalFunction whole() {
        return terms(0, POLES.length, 2 * Math.PI, CONSTANT, PROPORTIONAL);
    }

    /** The pole of a list nearest to a wanted one. */
    static int nearest(List<Complex> poles, Complex wanted) {
        int best = 0;
        for (int k = 1; k < poles.size(); k++) {
            if (poles.get(k).minus(wanted).magnitude() < poles.get(best).minus(wanted).magnitude()) {
                best = k;
            }
        }
        return best;
    }
}
