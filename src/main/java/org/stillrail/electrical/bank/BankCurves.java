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
        List<Curve> branches = new ArrayList<>(m);
        for (int k = 0; k < m; k++) {
            double[] r = new double[n];
            double[] x = new double[n];
            bank.branches().get(k).addImpedanceTo(grid, r, x);
            refuseLosslessSeries(bank.branches().get(k), grid, r, x);
            invert(r, x, g[k], b[k]);
            add(g[k], gSum);
            add(b[k], bSum);
            branches.add(Curve.takingOver(grid, r, x));
        }
        refuseLosslessParallel(bank, branches, gSum, bSum);
        double[] r = new double[n];
        double[] x = new double[n];
        invert(gSum, bSum, r, x);
        List<Curve> shares = new ArrayList<>(m);
        for (int k = 0; k < m; k++) {
            shares.add(share(grid, g[k], b[k], r, x));
        }
        return new BankCurves(Curve.takingOver(grid, r, x), List.copyOf(branches), List.copyOf(shares));
    }

    private static void refuseLosslessSeries(Branch branch, FrequencyGrid grid, double[] r, double[] x) {
        double inductance = branch.inductanceAtInfinityH();
        for (int i = 0; i < r.length; i++) {
            if (r[i] == 0 && Math.abs(x[i]) <= CANCELLED * grid.omega(i) * inductance) {
                throw new LosslessResonanceException("Branch '" + branch.label() + "'", grid.hz(i));
            }
        }
    }

    /**
     * Without any conductance the susceptances may cancel. Each is uncertain by the rounding of its frequency, which weighs
     * more where the branch is near its own resonance.
     */
    private static void refuseLosslessParallel(Bank bank, List<Curve> branches, double[] gSum, double[] bSum) {
        FrequencyGrid grid = branches.get(0).grid();
        for (int i = 0; i < gSum.length; i++) {
            if (gSum[i] != 0) {
                continue;
            }
            double scale = 0;
            for (int k = 0; k < branches.size(); k++) {
                double x = Math.abs(branches.get(k).imaginary(i));
                scale += (1 + 2 * grid.omega(i) * bank.branches().get(k).inductanceAtInfinityH() / x) / x;
            }
            if (Math.abs(bSum[i]) <= CANCELLED * scale) {
                throw new LosslessResonanceException("The bank", grid.hz(i));
            }
        }
    }

    /** One over a complex number, point by point. */
    private static void invert(double[] re, double[] im, double[] outRe, double[] outIm) {
        for (int i = 0; i < re.length; i++) {
            double factor = 1 / (re[i] * re[i] + im[i] * im[i]);
            outRe[i] = re[i] * factor;
            outIm[i] = -im[i] * factor;
        }
    }

    private static void add(double[] values, double[] sum) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += values[i];
        }
    }

    /** {@code Ybranch * Zbank}. */
    private static Curve share(FrequencyGrid grid, double[] g, double[] b, double[] r, double[] x) {
        int n = g.length;
        double[] re = new double[n];
        double[] im = new double[n];
        for (int i = 0; i < n; i++) {
            re[i] = g[i] * r[i] - b[i] * x[i];
            im[i] = g[i] * x[i] + b[i] * r[i];
        }
        return Curve.takingOver(grid, re, im);
    }
}
