package org.stillrail.electrical.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a one-port's {@code Re Z(jw)} is negative, exactly: with a realisation A, b, c, d,
 * {@code Re Z(jw) = d + c A (xI - A^2)^-1 b} at {@code x = -w^2}, so the crossings are
 * {@code w^2 = eigenvalues of A (b c / d - A)}, half the size of the Hamiltonian matrix (A. Semlyen, B. Gustavsen, IEEE Trans. Power Delivery
 * 24(3), 2009; from memory). The same in {@code 1/x}, divided by {@code Re Z(0)}, is exact for the low crossings and serves
 * where d is 0. Between two neighbouring crossings the sign is that of one value.
 *
 * <p>An inductance and a capacitance in series do not enter; they must not be negative. The poles must be stable.
 */
final class Passivity {

    /** An eigenvalue this far from the real axis, relatively, may still be a double crossing seen through rounding. */
    private static final double NEARLY_REAL = 0.1;
    private static final double ROUNDING = 1e-13;
    private static final int GOLDEN_STEPS = 40;

    private Passivity() {
    }

    /** A band where {@code Re Z} is negative; {@code worstOmega} may be 0 or infinite, {@code worstRe} is its lowest value. */
    record Violation(double fromOmega, double toOmega, double worstOmega, double worstRe) {
    }

    /** @param known false when the crossings could not be computed: then nothing is proven */
    record Report(boolean known, List<Violation> violations) {

        boolean passive() {
            return known && violations.isEmpty();
        }
    }

    static Report of(RationalFunction z) {
        if (!z.stable() || z.residueAtZero() < 0 || z.proportional() < 0) {
            return new Report(false, List.of());
        }
        List<Double> bounds = new ArrayList<>();
        boolean known = z.entries() == 0 || crossings(z, bounds);
        for (int k = 0; k < z.entries(); k++) {
            bounds.add(Math.hypot(z.poleRe(k), z.poleIm(k)));
        }
        bounds.removeIf(omega -> !(omega > 0) || omega.isInfinite());
        bounds.sort(null);
        return new Report(known, bands(z, bounds));
    }

    /** Adds the candidates for crossings, in rad/s. False when neither form can be computed. */
    private static boolean crossings(RationalFunction z, List<Double> bounds) {
        int entries = z.entries();
        double[] alpha = new double[entries];
        double[] beta = new double[entries];
        double scale = scale(z, 0);
        boolean known = false;
        double d = z.constant();
        if (Math.abs(d) > ROUNDING * scale) {
            Row row = new Row(z, false);
            for (int k = 0; k < entries; k++) {
                double a = z.poleRe(k);
                double b = z.poleIm(k);
                alpha[k] = b * b - a * a;
                beta[k] = -2 * a * b;
            }
            List<double[]> squares = DiagonalPlusRankOne.upperEigenvalues(alpha, beta, row.b, row.timesPole(z, 1), 1 / d);
            known = !squares.isEmpty();
            addRoots(squares, bounds, false);
        }
        double atZero = z.realAtZero();
        if (Math.abs(atZero) > ROUNDING * scale) {
            Row row = new Row(z, true);
            for (int i = 0; i < entries; i++) {
                int k = entries - 1 - i;
                double a = z.poleRe(k);
                double b = z.poleIm(k);
                double square = (a * a + b * b) * (a * a + b * b);
                alpha[i] = (b * b - a * a) / square;
                beta[i] = 2 * a * b / square;
            }
            List<double[]> squares = DiagonalPlusRankOne.upperEigenvalues(alpha, beta, row.b, row.timesPole(z, -3), -1 / atZero);
            known |= !squares.isEmpty();
            addRoots(squares, bounds, true);
        }
        return known;
    }

    /** b and c of the realisation, blocks in the function's order or from the last to the first. */
    private static final class Row {

        final double[] b;
        private final double[] c;
        private final boolean reversed;

        Row(RationalFunction z, boolean reversed) {
            int size = 0;
            for (int k = 0; k < z.entries(); k++) {
                size += z.poleIm(k) == 0 ? 1 : 2;
            }
            this.b = new double[size];
            this.c = new double[size];
            this.reversed = reversed;
            int row = 0;
            for (int i = 0; i < z.entries(); i++) {
                int k = reversed ? z.entries() - 1 - i : i;
                c[row] = z.residueRe(k);
                b[row] = z.poleIm(k) == 0 ? 1 : 2;
                if (z.poleIm(k) != 0) {
                    c[row + 1] = z.residueIm(k);
                    row += 1;
                }
                row += 1;
            }
        }

        /** {@code c A^power}; the pair (u, v) times its block is {@code u + j v} times the pole. */
        double[] timesPole(RationalFunction z, int power) {
            double[] product = c.clone();
            int row = 0;
            for (int i = 0; i < z.entries(); i++) {
                int k = reversed ? z.entries() - 1 - i : i;
                double a = z.poleRe(k);
                double b2 = z.poleIm(k);
                boolean pair = b2 != 0;
                double square = a * a + b2 * b2;
                for (int step = 0; step < Math.abs(power); step++) {
                    double re = power > 0 ? a : a / square;
                    double im = power > 0 ? b2 : -b2 / square;
                    double u = product[row];
                    double v = pair ? product[row + 1] : 0;
                    product[row] = u * re - v * im;
                    if (pair) {
                        product[row + 1] = u * im + v * re;
                    }
                }
                row += pair ? 2 : 1;
            }
            return product;
        }
    }

    private static void addRoots(List<double[]> squares, List<Double> bounds, boolean inverse) {
        for (double[] square : squares) {
            if (square[0] > 0 && square[1] <= NEARLY_REAL * square[0]) {
                bounds.add(Math.sqrt(inverse ? 1 / square[0] : square[0]));
            }
        }
    }

    private static List<Violation> bands(RationalFunction z, List<Double> bounds) {
        List<Violation> found = new ArrayList<>();
        double from = 0;
        for (int i = 0; i <= bounds.size(); i++) {
            double to = i < bounds.size() ? bounds.get(i) : Double.POSITIVE_INFINITY;
            double inside = inside(from, to);
            boolean negative = negative(z, inside) || from == 0 && negativeAtZero(z) || Double.isInfinite(to) && negativeAtInfinity(z);
            if (negative) {
                Violation here = deepest(z, from, to);
                int last = found.size() - 1;
                if (last >= 0 && found.get(last).toOmega() == from) {
                    Violation before = found.remove(last);
                    Violation worse = before.worstRe() < here.worstRe() ? before : here;
                    here = new Violation(before.fromOmega(), to, worse.worstOmega(), worse.worstRe());
                }
                found.add(here);
            }
            from = to;
        }
        return List.copyOf(found);
    }

    private static double inside(double from, double to) {
        if (from == 0) {
            return Double.isInfinite(to) ? 1 : to / 2;
        }
        return Double.isInfinite(to) ? 2 * from : Math.sqrt(from) * Math.sqrt(to);
    }

    private static boolean negative(RationalFunction z, double omega) {
        return z.at(omega).re() < -ROUNDING * scale(z, omega);
    }

    private static boolean negativeAtZero(RationalFunction z) {
        return z.realAtZero() < -ROUNDING * scale(z, 0);
    }

    private static boolean negativeAtInfinity(RationalFunction z) {
        return z.constant() < 0;
    }

    /** Sum of the magnitudes that add to {@code Re Z}: what rounding is measured against. */
    private static double scale(RationalFunction z, double omega) {
        double sum = Math.abs(z.constant());
        for (int k = 0; k < z.entries(); k++) {
            double below = Math.hypot(z.poleRe(k), omega - z.poleIm(k));
            double residue = Math.hypot(z.residueRe(k), z.residueIm(k));
            sum += residue / below + (z.poleIm(k) == 0 ? 0 : residue / Math.hypot(z.poleRe(k), omega + z.poleIm(k)));
        }
        return sum;
    }

    /** Lowest value in a band that holds no crossing, by golden section over log frequency and at its open ends. */
    private static Violation deepest(RationalFunction z, double from, double to) {
        double low = Math.log(from == 0 ? inside(from, to) * 1e-6 : from);
        double high = Math.log(Double.isInfinite(to) ? inside(from, to) * 1e6 : to);
        double ratio = (Math.sqrt(5) - 1) / 2;
        double left = high - ratio * (high - low);
        double right = low + ratio * (high - low);
        double atLeft = z.at(Math.exp(left)).re();
        double atRight = z.at(Math.exp(right)).re();
        for (int step = 0; step < GOLDEN_STEPS; step++) {
            if (atLeft < atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - ratio * (high - low);
                atLeft = z.at(Math.exp(left)).re();
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + ratio * (high - low);
                atRight = z.at(Math.exp(right)).re();
            }
        }
        double omega = Math.exp(atLeft < atRight ? left : right);
        double worst = Math.min(atLeft, atRight);
        if (from == 0 && z.realAtZero() < worst) {
            omega = 0;
            worst = z.realAtZero();
        }
        if (Double.isInfinite(to) && z.constant() < worst) {
            omega = Double.POSITIVE_INFINITY;
            worst = z.constant();
        }
        return new Violation(from, to, omega, worst);
    }
}
