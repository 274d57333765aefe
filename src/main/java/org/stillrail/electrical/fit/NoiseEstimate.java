package org.stillrail.electrical.fit;

import java.util.Arrays;

/**
 * Noise of a smooth curve without a model of it: each point is foretold from its four neighbours by the cubic through them
 * over log f, and the median of the misses is scaled to a standard deviation. Misses by curvature count as noise, so the
 * figure is an upper estimate on a coarse grid.
 */
final class NoiseEstimate {

    /** Median of the Rayleigh distribution over its scale, {@code sqrt(2 ln 2)}. */
    private static final double RAYLEIGH_MEDIAN = Math.sqrt(2 * Math.log(2));

    private NoiseEstimate() {
    }

    /**
     * Standard deviation of the real and of the imaginary part, over the magnitude; 0 under five points.
     *
     * @param omega ascending, in any unit
     */
    static double relative(double[] omega, double[] re, double[] im) {
        int n = omega.length;
        if (n < 5) {
            return 0;
        }
        double[] misses = new double[n - 4];
        double[] weight = new double[4];
        for (int i = 2; i < n - 2; i++) {
            int[] at = {i - 2, i - 1, i + 1, i + 2};
            double variance = 1;
            double missRe = re[i];
            double missIm = im[i];
            for (int k = 0; k < 4; k++) {
                weight[k] = 1;
                for (int m = 0; m < 4; m++) {
                    if (m != k) {
                        weight[k] *= Math.log(omega[i] / omega[at[m]]) / Math.log(omega[at[k]] / omega[at[m]]);
                    }
                }
                variance += weight[k] * weight[k];
                missRe -= weight[k] * re[at[k]];
                missIm -= weight[k] * im[at[k]];
            }
            misses[i - 2] = Math.hypot(missRe, missIm) / (Math.hypot(re[i], im[i]) * Math.sqrt(variance));
        }
        Arrays.sort(misses);
        return misses[misses.length / 2] / RAYLEIGH_MEDIAN;
    }
}
