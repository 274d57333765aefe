package org.stillrail.electrical.bank;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * The impedance of a bank and of its branches on one grid, in ohm.
 *
 * @param bank     impedance of the whole bank
 * @param branches impedance of each branch, in the bank's order
 * @param shares   complex share of the total current of each branch, {@code Ibranch / Itotal}; magnitudes may exceed 1
 *                 and do not add to 1 where current circulates, but the complex shares do
 */
public record BankCurves(Curve bank, List<Curve> branches, List<Curve> shares) {

    /**
     * A lossless resonance shows up as a residue of rounding: this many ulps of the parts that cancel. It covers the
     * rounding of {@code 1 / (2 pi sqrt(L C))} and of a log-spaced grid.
     */
    private static final double CANCELLED = 64 * Math.ulp(1.0);

    static BankCurves of(Bank bank, FrequencyGrid grid) {
        int n = grid.size();
        int m = bank.branches().size();
        double[][] g = new double[m][n];
        double[][] b = new double[m][n];
        double[] gSum = new double[n];
        double[] bSum = new double[n];
        double[] scale = new double[n];
        List<Curve> branches = new ArrayList<>(m);
        for (int k = 0; k < m; k++) {
            Branch branch = bank.branches().get(k);
            double[] r = new double[n];
            double[] x = new double[n];
            branch.addImpedanceTo(grid, r, x);
            double inductance = branch.inductanceAtInfinityH();
            for (int i = 0; i < n; i++) {
                double squared = r[i] * r[i] + x[i] * x[i];
                if (r[i] == 0 && Math.abs(x[i]) <= CANCELLED * grid.omega(i) * inductance) {
                    throw new LosslessResonanceException("Branch '" + branch.label() + "'", grid.hz(i));
                }
                g[k][i] = r[i] / squared;
                b[k][i] = -x[i] / squared;
                gSum[i] += g[k][i];
                bSum[i] += b[k][i];
                scale[i] += Math.abs(b[k][i]) * (1 + 2 * grid.omega(i) * inductance / Math.abs(x[i]));
            }
            branches.add(new Curve(grid, r, x));
        }
        double[] r = new double[n];
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            if (gSum[i] == 0 && Math.abs(bSum[i]) <= CANCELLED * scale[i]) {
                throw new LosslessResonanceException("The bank", grid.hz(i));
            }
            double squared = gSum[i] * gSum[i] + bSum[i] * bSum[i];
            r[i] = gSum[i] / squared;
            x[i] = -bSum[i] / squared;
        }
        List<Curve> shares = new ArrayList<>(m);
        for (int k = 0; k < m; k++) {
            shares.add(share(grid, g[k], b[k], r, x));
        }
        return new BankCurves(new Curve(grid, r, x), List.copyOf(branches), List.copyOf(shares));
    }

    /** {@code Ybranch * Zbank}. */
    private static Curve share(FrequencyGrid grid, double[] g, double[] b, double[] r, double[] x) {
        int n = grid.size();
        double[] re = new double[n];
        double[] im = new double[n];
        for (int i = 0; i < n; i++) {
            re[i] = g[i] * r[i] - b[i] * x[i];
            im[i] = g[i] * x[i] + b[i] * r[i];
        }
        return new Curve(grid, re, im);
    }
}
