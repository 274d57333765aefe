package org.stillrail.electrical.fit;

/**
 * How far a fit is from the points, all relative.
 *
 * @param worst           largest complex error over |Z|
 * @param rms             root mean square of the same
 * @param worstAt         index of the worst point
 * @param worstResistance largest error of Re Z over |Re Z|; points with Re Z = 0 are left out
 * @param lossMiss        the same, where an error that the noise alone makes, or below {@code NO_LOSS} of |Z|, does not count
 * @param likeNeighbour   correlation of each point's relative error with that of the next: near 1 the fit misses a shape, near 0
 *                        what it leaves is scatter
 */
record FitError(double worst, double rms, int worstAt, double worstResistance, double lossMiss, double likeNeighbour) {

    private static final double NO_LOSS = 1e-5;

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
        double worst = 0;
        double sum = 0;
        int worstAt = 0;
        double worstResistance = 0;
        double lossMiss = 0;
        double together = 0;
        double beforeRe = 0;
        double beforeIm = 0;
        double quiet = Math.max(NO_LOSS, samples.loudest());
        for (int i = 0; i < n; i++) {
            double missRe = re[i] - samples.re[i];
            double missIm = im[i] - samples.im[i];
            double relativeRe = missRe / samples.magnitude[i];
            double relativeIm = missIm / samples.magnitude[i];
            double square = relativeRe * relativeRe + relativeIm * relativeIm;
            together += relativeRe * beforeRe + relativeIm * beforeIm;
            beforeRe = relativeRe;
            beforeIm = relativeIm;
            sum += square;
            if (!(square <= worst)) {
                worst = square;
                worstAt = i;
            }
            if (samples.re[i] != 0) {
                double miss = Math.abs(missRe / samples.re[i]);
                worstResistance = Math.max(worstResistance, miss);
                if (Math.abs(missRe) > quiet * samples.magnitude[i]) {
                    lossMiss = Math.max(lossMiss, miss);
                }
            }
        }
        return new FitError(Math.sqrt(worst), Math.sqrt(sum / n), worstAt, worstResistance, lossMiss,
                sum > 0 ? together / sum : 0);
    }
}
