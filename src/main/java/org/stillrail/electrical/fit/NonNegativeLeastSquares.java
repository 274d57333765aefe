package org.stillrail.electrical.fit;

/**
 * Smallest {@code |E y - f|} over {@code y >= 0}, by active sets, and the least-distance problem on top of it
 * (C. L. Lawson, R. J. Hanson, Solving Least Squares Problems, 1974, chapter 23; from memory).
 */
final class NonNegativeLeastSquares {

    private static final double OPTIMAL = 1e-12;
    private static final int ROUNDS_PER_UNKNOWN = 5;

    private NonNegativeLeastSquares() {
    }

    /** Smallest {@code |u|} with {@code g_i' u >= h_i} for every i; null when no u meets them all. */
    static double[] leastDistance(double[][] g, double[] h) {
        int constraints = g.length;
        int size = g[0].length;
        double[][] columns = new double[constraints][size + 1];
        for (int i = 0; i < constraints; i++) {
            double norm = Math.abs(h[i]);
            for (double entry : g[i]) {
                norm = Math.max(norm, Math.abs(entry));
            }
            double scale = norm > 0 ? 1 / norm : 1;
            for (int k = 0; k < size; k++) {
                columns[i][k] = g[i][k] * scale;
            }
            columns[i][size] = h[i] * scale;
        }
        double[] f = new double[size + 1];
        f[size] = 1;
        double[] residual = residual(columns, solve(columns, f), f);
        if (!(Math.abs(residual[size]) > OPTIMAL)) {
            return null;
        }
        double[] u = new double[size];
        for (int k = 0; k < size; k++) {
            u[k] = -residual[k] / residual[size];
        }
        return u;
    }

    /** {@code E y - f}. */
    private static double[] residual(double[][] columns, double[] y, double[] f) {
        double[] r = new double[f.length];
        for (int i = 0; i < r.length; i++) {
            r[i] = -f[i];
        }
        for (int k = 0; k < columns.length; k++) {
            for (int i = 0; i < r.length; i++) {
                r[i] += columns[k][i] * y[k];
            }
        }
        return r;
    }

    static double[] solve(double[][] columns, double[] f) {
        int n = columns.length;
        boolean[] free = new boolean[n];
        double[] y = new double[n];
        for (int round = 0; round < ROUNDS_PER_UNKNOWN * n + ROUNDS_PER_UNKNOWN; round++) {
            int entering = steepest(columns, residual(columns, y, f), free);
            if (entering < 0 || count(free) == f.length) {
                return y;
            }
            free[entering] = true;
            double[] trial = unconstrained(columns, f, free);
            while (lowest(trial, free) <= 0) {
                double step = 1;
                for (int k = 0; k < n; k++) {
                    if (free[k] && trial[k] <= 0) {
                        step = Math.min(step, y[k] == trial[k] ? 0 : y[k] / (y[k] - trial[k]));
                    }
                }
                for (int k = 0; k < n; k++) {
                    y[k] += step * (trial[k] - y[k]);
                    if (free[k] && (y[k] <= 0 || trial[k] <= 0 && y[k] <= OPTIMAL * Math.abs(trial[k]))) {
                        free[k] = false;
                        y[k] = 0;
                    }
                }
                trial = unconstrained(columns, f, free);
            }
            y = trial;
        }
        return y;
    }

    private static int steepest(double[][] columns, double[] residual, boolean[] free) {
        int best = -1;
        double most = OPTIMAL;
        for (int k = 0; k < columns.length; k++) {
            double gradient = 0;
            for (int i = 0; i < residual.length; i++) {
                gradient -= columns[k][i] * residual[i];
            }
            if (!free[k] && gradient > most) {
                most = gradient;
                best = k;
            }
        }
        return best;
    }

    private static int count(boolean[] free) {
        int count = 0;
        for (boolean f : free) {
            count += f ? 1 : 0;
        }
        return count;
    }

    private static double lowest(double[] y, boolean[] free) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int k = 0; k < y.length; k++) {
            lowest = free[k] ? Math.min(lowest, y[k]) : lowest;
        }
        return lowest;
    }

    private static double[] unconstrained(double[][] columns, double[] f, boolean[] free) {
        int count = count(free);
        double[] y = new double[columns.length];
        if (count == 0) {
            return y;
        }
        double[][] chosen = new double[count + 1][];
        int next = 0;
        for (int k = 0; k < columns.length; k++) {
            if (free[k]) {
                chosen[next++] = columns[k].clone();
            }
        }
        chosen[count] = f.clone();
        double[] solution = Triangle.of(chosen).solve(0, count, count);
        next = 0;
        for (int k = 0; k < columns.length; k++) {
            if (free[k]) {
                y[k] = solution[next++];
            }
        }
        return y;
    }
}
