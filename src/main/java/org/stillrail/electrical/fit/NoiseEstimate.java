package org.stillrail.electrical.fit;

import java.util.Arrays;

/**
 * Noise of a smooth curve without a model of it: each point is foretold from its neighbours by the polynomial through them
 * over log f, and medians of the misses are scaled to a standard deviation: one of all points, and one of every
 * {@code BLOCK} neighbours, for noise often rises towards an end of the band. Misses by curvature count too, so the figures are
 * upper estimates. They are credible where four neighbours and six tell the same: curvature would shrink with the degree,
 * noise does not.
 *
 * @param typical  standard deviation of the real and of the imaginary part, over the magnitude
 * @param byPoint  the same at each point; at least the typical one
 * @param credible whether this is scatter, and not curvature on a coarse grid
 */
record NoiseEstimate(double typical, double[] byPoint, boolean credible) {

    /** Median of the Rayleigh distribution over its scale, {@code sqrt(2 ln 2)}. */
    private static final double RAYLEIGH_MEDIAN = Math.sqrt(2 * Math.log(2));
    private static final double SAME = 0.7;
    private static final int FEWEST_POINTS = 12;
    private static final int BLOCK = 40;

    /**
     * Nothing credible under twelve points.
     *
     * @param omega ascending, in any unit
     */
    static NoiseEstimate of(double[] omega, double[] re, double[] im) {
        int n = omega.length;
        if (n < FEWEST_POINTS) {
            return new NoiseEstimate(0, new double[n], false);
        }
        double[] logarithm = new double[n];
        for (int i = 0; i < n; i++) {
            logarithm[i] = Math.log(omega[i]);
        }
        double[] byFour = misses(logarithm, re, im, 2);
        double[] bySix = misses(logarithm, re, im, 3);
        double four = median(byFour, 0, n - 4);
        double six = median(bySix, 0, n - 6);
        double typical = Math.min(four, six);
        return new NoiseEstimate(typical, byPoint(six < four ? bySix : byFour, n, typical), typical >= SAME * Math.max(four, six));
    }

    private static double[] misses(double[] x, double[] re, double[] im, int side) {
        int n = x.length;
        double[] misses = new double[n - 2 * side];
        for (int i = side; i < n - side; i++) {
            double variance = 1;
            double missRe = re[i];
            double missIm = im[i];
            for (int k = i - side; k <= i + side; k++) {
                if (k != i) {
                    double weight = weight(x, i, k, side);
                    variance += weight * weight;
                    missRe -= weight * re[k];
                    missIm -= weight * im[k];
                }
            }
            misses[i - side] = Math.hypot(missRe, missIm) / (Math.hypot(re[i], im[i]) * Math.sqrt(variance));
        }
        return misses;
    }

    /** Lagrange weight of point k for the value at point i. */
    private static double weight(double[] x, int i, int k, int side) {
        double weight = 1;
        for (int m = i - side; m <= i + side; m++) {
            if (m != k && m != i) {
                weight *= (x[i] - x[m]) / (x[k] - x[m]);
            }
        }
        return weight;
    }

    private static double median(double[] values, int from, int to) {
        double[] sorted = Arrays.copyOfRange(values, from, to);
        Arrays.sort(sorted);
        return sorted[sorted.length / 2] / RAYLEIGH_MEDIAN;
    }

    /** Between the middles of two blocks the logarithm is linear. */
    private static double[] byPoint(double[] misses, int n, double typical) {
        int blocks = Math.max(1, misses.length / BLOCK);
        double[] logarithm = new double[blocks];
        for (int b = 0; b < blocks; b++) {
            int from = (int) ((long) b * misses.length / blocks);
            int to = (int) ((long) (b + 1) * misses.length / blocks);
            logarithm[b] = Math.log(Math.max(typical, median(misses, from, to)));
        }
        double[] byPoint = new double[n];
        for (int i = 0; i < n; i++) {
            double place = (i + 0.5) * blocks / n - 0.5;
            int low = (int) Math.max(0, Math.min(blocks - 2, Math.floor(place)));
            double share = place - low;
            byPoint[i] = blocks == 1 ? typical : typical == 0 ? 0
                    : Math.max(typical, Math.exp(logarithm[low] * (1 - share) + logarithm[low + 1] * share));
        }
        return byPoint;
    }
}
