package org.stillrail.electrical.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes a fit passive by the smallest change of its residues, constant, inductance and capacitance: the least weighted
 * change of the curve under {@code Re Z >= margin} at the worst point of every band found negative so far. Poles stay.
 * Solving and checking repeat a bounded number of times (the idea of B. Gustavsen, A. Semlyen, IEEE Trans. Power Systems
 * 16(1), 2001, with a least-distance problem instead of a linearised one, for with the poles fixed Re Z is linear; from memory).
 */
final class PassivityEnforcement {

    private static final int ROUNDS = 25;
    /** The correction overshoots by this share of the violation's depth, and by this share of |Z| where the depth is less. */
    private static final double OVERSHOOT = 1e-3;
    private static final double MARGIN = 1e-6;
    /** A correction that leaves more rms error than this is none. */
    private static final double SPOILT = 0.05;

    private PassivityEnforcement() {
    }

    /** The corrected fit, checked again; null when it stays negative somewhere. The fit itself where it is passive already. */
    static ResidueFit of(Samples samples, ResidueFit fit) {
        Passivity.Report report = Passivity.of(fit.function());
        if (report.passive()) {
            return fit;
        }
        int size = fit.coefficients.length;
        List<double[]> rows = new ArrayList<>();
        List<Double> limits = new ArrayList<>();
        addSeriesElements(fit, rows, limits);
        for (int round = 1; round <= ROUNDS && report.known(); round++) {
            for (Passivity.Violation violation : report.violations()) {
                rows.add(realPartRow(fit, violation.worstOmega()));
                limits.add(margin(samples, fit, violation));
            }
            double[][] g = new double[rows.size()][];
            double[] h = new double[rows.size()];
            for (int i = 0; i < g.length; i++) {
                double[] row = rows.get(i);
                h[i] = limits.get(i);
                for (int k = 0; k < size; k++) {
                    h[i] -= row[k] * fit.coefficients[k];
                }
                g[i] = fit.triangle.forward(row);
            }
            double[] u = NonNegativeLeastSquares.leastDistance(g, h);
            if (u == null) {
                return null;
            }
            double[] change = fit.triangle.backward(u);
            double[] x = fit.coefficients.clone();
            for (int k = 0; k < size; k++) {
                x[k] += change[k];
            }
            report = Passivity.of(fit.function(x));
            ResidueFit corrected = fit.with(samples, x);
            if (report.passive() || corrected.error.rms() > SPOILT) {
                return report.passive() ? corrected : null;
            }
        }
        return null;
    }

    /** |Z| is taken inside the band of the points, for beyond it the inductance or capacitance alone would set it. */
    private static double margin(Samples samples, ResidueFit fit, Passivity.Violation violation) {
        double omega = Math.max(samples.omega[0], Math.min(samples.omega[samples.size() - 1], violation.worstOmega()));
        double depth = -violation.worstRe();
        return Math.max(OVERSHOOT * depth, Math.min(MARGIN * fit.function().at(omega).magnitude(), depth));
    }

    /** Inductance and residue at 0 keep at least a trace of themselves. */
    private static void addSeriesElements(ResidueFit fit, List<double[]> rows, List<Double> limits) {
        int first = fit.poles.order() + 1;
        for (int k = first; k < fit.coefficients.length; k++) {
            double[] row = new double[fit.coefficients.length];
            row[k] = 1;
            rows.add(row);
            limits.add(1e-6 * fit.coefficients[k]);
        }
    }

    /** What each coefficient adds to {@code Re Z} at {@code omega}. */
    private static double[] realPartRow(ResidueFit fit, double omega) {
        double[] row = new double[fit.coefficients.length];
        row[fit.poles.order()] = 1;
        if (!Double.isInfinite(omega)) {
            PartialFractions basis = new PartialFractions(new double[] {omega}, fit.poles, fit.terms);
            for (int k = 0; k < row.length; k++) {
                row[k] = basis.re[k][0];
            }
        }
        return row;
    }
}
