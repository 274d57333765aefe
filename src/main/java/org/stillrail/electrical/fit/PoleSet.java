package org.stillrail.electrical.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * Poles in the open left half-plane: real ones ({@code im = 0}) and the upper one of each conjugate pair, largest first.
 */
final class PoleSet {

    /** Poles this far outside the data's band cannot be told from a constant, a slope or a pole at 0; they stop here. */
    private static final double BEYOND_BAND = 100;
    /** A pair's least damping over its magnitude. */
    private static final double LEAST_DAMPING = 1e-9;
    /** Two real poles closer than this, relatively, are moved apart, or their columns would be the same. */
    private static final double APART = 1e-3;

    static final PoleSet NONE = new PoleSet(List.of());

    final double[] re;
    final double[] im;

    private PoleSet(List<double[]> poles) {
        List<double[]> sorted = new ArrayList<>(poles);
        sorted.sort((p, q) -> Double.compare(Math.hypot(q[0], q[1]), Math.hypot(p[0], p[1])));
        re = new double[sorted.size()];
        im = new double[sorted.size()];
        for (int k = 0; k < re.length; k++) {
            re[k] = sorted.get(k)[0];
            im[k] = sorted.get(k)[1];
        }
    }

    /**
     * Takes any poles and makes them usable: unstable ones are mirrored into the left half-plane, those far outside the
     * band brought to its edge, equal real ones moved apart.
     *
     * @param poles {re, im} each, im not negative
     */
    static PoleSet tamed(List<double[]> poles, double lowestOmega, double highestOmega) {
        List<double[]> kept = new ArrayList<>(poles.size());
        for (double[] pole : poles) {
            double size = Math.hypot(pole[0], pole[1]);
            double held = Math.min(Math.max(size, lowestOmega / BEYOND_BAND), highestOmega * BEYOND_BAND);
            if (!Double.isFinite(size) || size == 0) {
                kept.add(new double[] {-held, 0});
            } else {
                double damping = Math.max(Math.abs(pole[0]), LEAST_DAMPING * size) * held / size;
                kept.add(new double[] {-damping, pole[1] * held / size});
            }
        }
        PoleSet set = new PoleSet(kept);
        set.spread();
        return set;
    }

    private void spread() {
        double previous = 0;
        for (int k = 0; k < re.length; k++) {
            if (im[k] == 0) {
                if (previous != 0 && re[k] / previous > 1 - APART) {
                    re[k] = previous * (1 - APART);
                }
                previous = re[k];
            }
        }
    }

    /** Lightly damped pairs, evenly over log frequency, and one real pole in the middle where the order is odd. */
    static PoleSet pairs(int order, double lowestOmega, double highestOmega) {
        List<double[]> poles = new ArrayList<>();
        int pairs = order / 2;
        for (int k = 0; k < pairs; k++) {
            double beta = lowestOmega * Math.pow(highestOmega / lowestOmega, (k + 0.5) / pairs);
            poles.add(new double[] {-beta / 100, beta});
        }
        if (order % 2 == 1) {
            poles.add(new double[] {-Math.sqrt(lowestOmega * highestOmega), 0});
        }
        return new PoleSet(poles);
    }

    /** Real poles, evenly over log frequency. */
    static PoleSet reals(int order, double lowestOmega, double highestOmega) {
        List<double[]> poles = new ArrayList<>();
        for (int k = 0; k < order; k++) {
            poles.add(new double[] {-lowestOmega * Math.pow(highestOmega / lowestOmega, (k + 0.5) / order), 0});
        }
        return new PoleSet(poles);
    }

    /** These poles and one more real one, near {@code omega} but clear of the others. */
    PoleSet withRealNear(double omega) {
        double place = omega;
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int k = 0; k < re.length; k++) {
                if (im[k] == 0 && Math.abs(Math.log(place / -re[k])) < 0.2) {
                    place = -re[k] * 1.5;
                    moved = true;
                }
            }
        }
        List<double[]> poles = new ArrayList<>();
        for (int k = 0; k < re.length; k++) {
            poles.add(new double[] {re[k], im[k]});
        }
        poles.add(new double[] {-place, 0});
        return new PoleSet(poles);
    }

    int entries() {
        return re.length;
    }

    /** Number of poles, both of a pair counted. */
    int order() {
        int order = 0;
        for (double imaginary : im) {
            order += imaginary == 0 ? 1 : 2;
        }
        return order;
    }

    /** The largest relative move of a pole against another set; infinite where their shapes differ. */
    double distanceTo(PoleSet other) {
        if (entries() != other.entries()) {
            return Double.POSITIVE_INFINITY;
        }
        double worst = 0;
        for (int k = 0; k < re.length; k++) {
            worst = Math.max(worst, Math.hypot(re[k] - other.re[k], im[k] - other.im[k]) / Math.hypot(re[k], im[k]));
        }
        return worst;
    }
}
