package org.stillrail.electrical.fit;

import java.util.Arrays;

/**
 * Noise of a smooth curve without a model of it: each point is foretold from its neighbours by the polynomial through them
 * over log f, and the median of the misses is scaled to a standard deviation. Misses by curvature count too, so the figure
 * is an upper estimate. It is {@link #credible} where four neighbours and six tell the same: curvature would shrink with
 * the degree, noise does not.
 *
 * @param relative standard deviation of the real and of the imaginary part, over the magnitude
 */
record NoiseEstimate(double relative, boolean credible) {

    /** Median of the Rayleigh distribution over its scale, {@code sqrt(2 ln 2)}. */
    private static final double RAYLEIGH_MEDIAN = Math.sqrt(2 * Math.log(2));
    private static final double SAME = 0.7;
    private static final int FEWEST_POINTS = 12;

    /**
     * Nothing credible under twelve points.
     *
     * @param omega ascending, in any unit
     */
    static NoiseEstimate of(double[] omega, double[] re, double[] im) {
        if (omega.length < FEWEST_POINTS) {
            return new NoiseEstimate(0, false);
        }
        double byFour = median(omega, re, im, 2);
        double bySix = median(omega, re, im, 3);
        double least = Math.min(byFour, bySix);
        return new NoiseEstimate(least, least >= SAME * Math.max(byFour, bySix));
    }

    private static double median(double[] omega, double[] re, double[] im, int side) {
        int n = omega.length;
        double[] misses = new double[n - 2 * side];
        double[] logarithm = new double[n];
        for (int i = 0; i < n; i++) {
            logarithm[i] = Math.log(omega[i]);
        }
        for (int i = side; i < n - side; i++) {
            double variance = 1;
            double missRe = re[i];
            double missIm = im[i];
            for (int k = i - side; k <= i + side; k++) {
                if (k != i) {
                    double weight = weight(logarithm, i, k, side);
                    variance += weight * weight;
                    missRe -= weight * re[k];
                    missIm -= weight * im[k];
                }
            }
            misses[i - side] = Math.hypot(missRe, missIm) / (Math.hypot(re[i], im[i]) * Math.sqrt(variance));
        }
        Arrays.sort(misses);
        return misses[misses.length / 2] / RAYLEIGH_MEDIAN;
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
}
