package org.stillrail.electrical.fit;

/**
 * How far a fit is from the points, all relative.
 *
 * @param worst           largest complex error over |Z|
 * @param rms             root mean square of the same
 * @param worstAt         index of the worst point
 * @param worstResistance largest error of Re Z over |Re Z|; points with Re Z = 0 are left out
 * @param lossMiss        the same, where an error that the noise alone makes, or below {@code NO_LOSS} of |Z|, does not count;
 *                        also of the mean over every {@code BLOCK} points, where noise hides less
 * @param overNoise       rms of each error over that of the noise there; infinite without noise
 * @param outliers        whether a point is off by more than noise explains
 * @param likeNeighbour   correlation of each point's relative error with that of the next: near 1 the fit misses a shape, near 0
 *                        what it leaves is scatter
 */
record FitError(double worst, double rms, int worstAt, double worstResistance, double lossMiss, double overNoise, boolean outliers,
                double likeNeighbour) {

    private static final double NO_LOSS = 1e-5;
    private static final int BLOCK = 16;
    /** Standard deviations of a block's mean that noise makes now and then. */
    private static final double BLOCK_LOUDEST = 3.5;

    static FitError of(Samples samples, PartialFractions basis, double[] x) {
        int n = samples.size();
        double[] re = new double[n];
        double[] im = new double[n];
        for (int k = 0; k < x.length; k++) {
            double factor = x[k];
            double[] columnRe = basis.re[k];
            double[] columnIm = basis.im[k];
            for (int i = 0; i < n; i++) {
                re[i] += factor * columnRe[i];
                im[i] += factor * columnIm[i];
            }
        }
        for (int i = 0; i < n; i++) {
            re[i] = (re[i] - samples.re[i]) / samples.magnitude[i];
            im[i] = (im[i] - samples.im[i]) / samples.magnitude[i];
        }
        return of(samples, re, im);
    }

    /** From the errors of each part, over the magnitude. */
    private static FitError of(Samples samples, double[] missRe, double[] missIm) {
        int n = missRe.length;
        double worst = 0;
        int worstAt = 0;
        double sum = 0;
        double sumOverNoise = 0;
        double together = 0;
        double worstResistance = 0;
        double lossMiss = blockLossMiss(samples, missRe);
        boolean outliers = false;
        for (int i = 0; i < n; i++) {
            double square = missRe[i] * missRe[i] + missIm[i] * missIm[i];
            double scatter = samples.noise.byPoint()[i];
            double loudest = samples.loudest(i);
            sum += square;
            sumOverNoise += square / (2 * scatter * scatter);
            outliers |= square > loudest * loudest;
            if (i > 0) {
                together += missRe[i] * missRe[i - 1] + missIm[i] * missIm[i - 1];
            }
            if (!(square <= worst)) {
                worst = square;
                worstAt = i;
            }
            if (samples.re[i] != 0) {
                double miss = Math.abs(missRe[i] * samples.magnitude[i] / samples.re[i]);
                worstResistance = Math.max(worstResistance, miss);
                if (Math.abs(missRe[i]) > Math.max(NO_LOSS, loudest)) {
                    lossMiss = Math.max(lossMiss, miss);
                }
            }
        }
        return new FitError(Math.sqrt(worst), Math.sqrt(sum / n), worstAt, worstResistance, lossMiss, Math.sqrt(sumOverNoise / n),
                outliers, sum > 0 ? together / sum : 0);
    }

    private static double blockLossMiss(Samples samples, double[] missRe) {
        double worst = 0;
        for (int from = 0; from + BLOCK <= missRe.length && samples.noise.credible(); from += BLOCK) {
            double miss = 0;
            double loss = 0;
            double variance = 0;
            for (int i = from; i < from + BLOCK; i++) {
                miss += missRe[i];
                loss += samples.re[i] / samples.magnitude[i];
                variance += samples.noise.byPoint()[i] * samples.noise.byPoint()[i];
            }
            if (Math.abs(miss) > Math.max(BLOCK * NO_LOSS, BLOCK_LOUDEST * Math.sqrt(variance)) && loss > 0) {
                worst = Math.max(worst, Math.abs(miss) / loss);
            }
        }
        return worst;
    }
}
