package org.stillrail.electrical.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.bank.TwoNodePoint;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.curve.Thinning;

/**
 * Mounting resistance and inductance of every branch, so that the bank comes nearest to a measured sweep: smallest sum of
 * {@code |Zbank - Zmeasured|^2 / |Zmeasured|^2} within bounds, by Levenberg-Marquardt steps on the unknowns that are not
 * held by a bound. With {@code Z = 1 / sum 1/Zk} and {@code Zk = (Zpart + R + j w L) / n + Zshared},
 * {@code dZ/dRk = (Z/Zk)^2 / n} and {@code dZ/dLk = j w dZ/dRk}: derived here, exact. At two nodes Z is what the load sees, and
 * the share Z/Zk that of a current there ({@link TwoNodePoint}); the path stays.
 *
 * @param mountings  in the bank's order
 * @param before     rms relative error in per cent before
 * @param after      likewise after
 * @param iterations steps taken
 */
public record MountingFit(List<FittedMounting> mountings, double before, double after, int iterations) {

    private static final int MOST_POINTS = 600;
    private static final int MOST_ITERATIONS = 200;
    private static final double CONVERGED = 1e-10;
    private static final double DAMPING_START = 1e-3;
    private static final double DAMPING_MOST = 1e12;
    /** Unknowns are counted in these, so that steps in both weigh alike. */
    private static final double OHM = 1e-3;
    private static final double HENRY = 1e-9;

    public MountingFit {
        mountings = List.copyOf(mountings);
    }

    /** @throws IllegalArgumentException where the sweep has fewer points than there are unknowns, or a point of 0 ohm */
    public static MountingFit of(Bank bank, Curve measured, MountingBounds bounds) {
        return new Run(bank, Thinning.everySo(measured, MOST_POINTS), bounds).result();
    }

    private static final class Run {

        private final Bank bank;
        private final Curve measured;
        private final int branches;
        private final double[] most;
        /** Each branch without its mounting. */
        private final double[][] bareRe;
        private final double[][] bareIm;

        Run(Bank bank, Curve measured, MountingBounds bounds) {
            this.bank = bank;
            this.measured = measured;
            this.branches = bank.branches().size();
            if (2 * measured.size() < 2 * branches + 1) {
                throw new IllegalArgumentException("A sweep of " + measured.size() + " points does not tell the mountings of " + branches + " branches");
            }
            if (Arrays.stream(measured.magnitudes()).anyMatch(z -> !(z > 0))) {
                throw new IllegalArgumentException("The measured impedance is 0 at a point, which no bank reaches");
            }
            this.most = new double[2 * branches];
            this.bareRe = new double[branches][measured.size()];
            this.bareIm = new double[branches][measured.size()];
            for (int k = 0; k < branches; k++) {
                most[2 * k] = bounds.mostResistanceOhm() / OHM;
                most[2 * k + 1] = bounds.mostInductanceH() / HENRY;
                Branch branch = bank.branches().get(k);
                new Branch(branch.label(), branch.count(), branch.part(), SeriesPath.NONE, branch.shared())
                        .addImpedanceTo(measured.grid(), bareRe[k], bareIm[k]);
            }
        }

        MountingFit result() {
            double[] start = new double[2 * branches];
            for (int k = 0; k < branches; k++) {
                SeriesPath mounting = bank.branches().get(k).mounting();
                start[2 * k] = Math.min(most[2 * k], mounting.resistanceOhm() / OHM);
                start[2 * k + 1] = Math.min(most[2 * k + 1], mounting.inductanceH() / HENRY);
            }
            double before = cost(start);
            // A second start well off nothing: from bare parts a resonance may sit on the wrong side of a measured one.
            double[] other = start.clone();
            for (int k = 0; k < branches; k++) {
                other[2 * k] = Math.max(other[2 * k], 1);
                other[2 * k + 1] = Math.max(other[2 * k + 1], 1);
            }
            int[] steps = new int[1];
            double[] first = descend(start, steps);
            double[] second = descend(other, steps);
            double[] best = cost(first) <= cost(second) ? first : second;
            double after = cost(best);
            double[] sigma = sigmas(best, after);
            List<FittedMounting> mountings = new ArrayList<>();
            for (int k = 0; k < branches; k++) {
                Branch branch = bank.branches().get(k);
                boolean atBound = isAtBound(best, 2 * k) || isAtBound(best, 2 * k + 1);
                mountings.add(new FittedMounting(branch.label(), branch.mounting(), new SeriesPath(best[2 * k] * OHM, best[2 * k + 1] * HENRY),
                        sigma[2 * k] * OHM, sigma[2 * k + 1] * HENRY, atBound));
            }
            return new MountingFit(mountings, percent(before), percent(after), steps[0]);
        }

        private boolean isAtBound(double[] x, int i) {
            return x[i] == 0 || x[i] == most[i];
        }

        private double percent(double cost) {
            return 100 * Math.sqrt(cost / measured.size());
        }

        private double[] descend(double[] from, int[] steps) {
            double[] x = from.clone();
            double cost = cost(x);
            double damping = DAMPING_START;
            for (int i = 0; i < MOST_ITERATIONS && damping < DAMPING_MOST; i++) {
                steps[0]++;
                Normal normal = normal(x);
                double[] next = step(x, normal, damping);
                double nextCost = cost(next);
                if (nextCost < cost) {
                    boolean converged = cost - nextCost < CONVERGED * cost;
                    x = next;
                    cost = nextCost;
                    damping = Math.max(damping / 10, 1e-12);
                    if (converged) {
                        break;
                    }
                } else {
                    damping *= 10;
                }
            }
            return x;
        }

        /** Normal equations: {@code J' J} and {@code J' r}. */
        private record Normal(double[][] matrix, double[] gradient) {
        }

        private double[] step(double[] x, Normal normal, double damping) {
            int[] free = new int[x.length];
            int count = 0;
            for (int i = 0; i < x.length; i++) {
                boolean held = x[i] == 0 && normal.gradient()[i] > 0 || x[i] == most[i] && normal.gradient()[i] < 0;
                if (!held) {
                    free[count++] = i;
                }
            }
            double[] next = x.clone();
            if (count == 0) {
                return next;
            }
            DMatrixRMaj a = new DMatrixRMaj(count, count);
            DMatrixRMaj b = new DMatrixRMaj(count, 1);
            for (int i = 0; i < count; i++) {
                for (int k = 0; k < count; k++) {
                    a.set(i, k, normal.matrix()[free[i]][free[k]]);
                }
                a.set(i, i, a.get(i, i) * (1 + damping) + Double.MIN_NORMAL);
                b.set(i, 0, -normal.gradient()[free[i]]);
            }
            DMatrixRMaj d = new DMatrixRMaj(count, 1);
            if (CommonOps_DDRM.solve(a, b, d)) {
                for (int i = 0; i < count; i++) {
                    double moved = x[free[i]] + d.get(i, 0);
                    next[free[i]] = Double.isFinite(moved) ? Math.min(most[free[i]], Math.max(0, moved)) : x[free[i]];
                }
            }
            return next;
        }

        private double cost(double[] x) {
            double sum = 0;
            for (int i = 0; i < measured.size(); i++) {
                Complex miss = bankAt(i, x, null).minus(measuredAt(i));
                sum += Math.pow(miss.magnitude() / measured.magnitude(i), 2);
            }
            return sum;
        }

        private Normal normal(double[] x) {
            int n = x.length;
            double[][] matrix = new double[n][n];
            double[] gradient = new double[n];
            Complex[] slopes = new Complex[n];
            for (int i = 0; i < measured.size(); i++) {
                double weight = 1 / Math.pow(measured.magnitude(i), 2);
                Complex miss = bankAt(i, x, slopes).minus(measuredAt(i));
                for (int p = 0; p < n; p++) {
                    gradient[p] += weight * (slopes[p].re() * miss.re() + slopes[p].im() * miss.im());
                    for (int q = 0; q <= p; q++) {
                        matrix[p][q] += weight * (slopes[p].re() * slopes[q].re() + slopes[p].im() * slopes[q].im());
                        matrix[q][p] = matrix[p][q];
                    }
                }
            }
            return new Normal(matrix, gradient);
        }

        /** The bank's impedance, and its slopes over the unknowns where they are asked for. */
        private Complex bankAt(int i, double[] x, Complex[] slopes) {
            FrequencyGrid grid = measured.grid();
            Complex near = Complex.ZERO;
            Complex far = Complex.ZERO;
            Complex[] of = new Complex[branches];
            for (int k = 0; k < branches; k++) {
                Branch branch = bank.branches().get(k);
                int count = branch.count();
                of[k] = new Complex(bareRe[k][i] + x[2 * k] * OHM / count, bareIm[k][i] + grid.omega(i) * x[2 * k + 1] * HENRY / count).reciprocal();
                boolean atLoad = bank.distance() != null && branch.node() == Node.LOAD;
                near = atLoad ? near : near.plus(of[k]);
                far = atLoad ? far.plus(of[k]) : far;
            }
            TwoNodePoint nodes = bank.distance() == null ? null : bank.distance().at(grid.hz(i), near, far);
            Complex z = nodes == null ? near.reciprocal() : nodes.atLoad();
            for (int k = 0; slopes != null && k < branches; k++) {
                Complex voltage = nodes == null || bank.branches().get(k).node() == Node.LOAD ? z : nodes.transfer();
                Complex share = voltage.times(of[k]);
                Complex overR = share.times(share).times(1.0 / bank.branches().get(k).count());
                slopes[2 * k] = overR.times(OHM);
                slopes[2 * k + 1] = overR.times(new Complex(0, grid.omega(i))).times(HENRY);
            }
            return z;
        }

        private Complex measuredAt(int i) {
            return new Complex(measured.real(i), measured.imaginary(i));
        }

        private double[] sigmas(double[] x, double cost) {
            Normal normal = normal(x);
            int n = x.length;
            DMatrixRMaj matrix = new DMatrixRMaj(normal.matrix());
            double[] sigma = new double[n];
            Arrays.fill(sigma, Double.POSITIVE_INFINITY);
            if (CommonOps_DDRM.invert(matrix)) {
                double variance = cost / Math.max(1, 2 * measured.size() - n);
                for (int i = 0; i < n; i++) {
                    double square = matrix.get(i, i) * variance;
                    sigma[i] = square >= 0 && Double.isFinite(square) ? Math.sqrt(square) : Double.POSITIVE_INFINITY;
                }
            }
            return sigma;
        }
    }
}
