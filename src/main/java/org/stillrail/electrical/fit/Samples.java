package org.stillrail.electrical.fit;

import java.util.Arrays;
import org.stillrail.electrical.curve.Curve;

/**
 * What is fitted, in the shape the least squares want: frequencies divided by their geometric mean, and a weight for the
 * real and one for the imaginary part of each point.
 *
 * <p>The weight is {@code 1/|Z|}, so that every point counts by its relative error and a deep minimum is as important as
 * the capacitive tail; less where the points scatter more than elsewhere. The real part of a good capacitor is far below
 * {@code |Z|}; its weight rises towards {@code 1/|Re Z|}, but no further than where the noise, so weighted, equals the
 * tolerance: beyond that the fit would follow noise.
 */
final class Samples {

    /** The real part never weighs more than this over the imaginary part. */
    private static final double HIGHEST_EMPHASIS = 20;

    final double omegaScale;
    final double[] omega;
    final double[] re;
    final double[] im;
    final double[] magnitude;
    final double[] weightRe;
    final double[] weightIm;
    final NoiseEstimate noise;

    private Samples(double omegaScale, double[] omega, double[] re, double[] im, double[] magnitude,
                    double[] weightRe, double[] weightIm, NoiseEstimate noise) {
        this.omegaScale = omegaScale;
        this.omega = omega;
        this.re = re;
        this.im = im;
        this.magnitude = magnitude;
        this.weightRe = weightRe;
        this.weightIm = weightIm;
        this.noise = noise;
    }

    /** For a fit that aims at {@code tolerance}: the loss counts more, as far as the noise allows. */
    static Samples of(Curve curve, double tolerance) {
        return of(curve, tolerance, HIGHEST_EMPHASIS);
    }

    /** Both parts of a point count alike. */
    static Samples plain(Curve curve) {
        return of(curve, 1, 1);
    }

    private static Samples of(Curve curve, double tolerance, double highestEmphasis) {
        int n = curve.size();
        double[] omega = new double[n];
        double[] magnitude = new double[n];
        double scale = Math.sqrt(curve.grid().omega(0)) * Math.sqrt(curve.grid().omega(n - 1));
        for (int i = 0; i < n; i++) {
            omega[i] = curve.grid().omega(i) / scale;
            magnitude[i] = curve.magnitude(i);
        }
        double[] re = curve.reals();
        double[] im = curve.imaginaries();
        NoiseEstimate noise = NoiseEstimate.of(omega, re, im);
        double[] weightRe = new double[n];
        double[] weightIm = new double[n];
        for (int i = 0; i < n; i++) {
            double scatter = noise.byPoint()[i];
            double emphasis = Math.min(highestEmphasis, Math.max(1, tolerance / scatter));
            double trust = noise.credible() ? Math.max(tolerance, noise.typical()) / Math.max(tolerance, scatter) : 1;
            weightIm[i] = trust / magnitude[i];
            weightRe[i] = trust / Math.max(Math.abs(re[i]), magnitude[i] / emphasis);
        }
        return new Samples(scale, omega, re, im, magnitude, weightRe, weightIm, noise);
    }

    /** At most {@code most} of these points, as evenly over log frequency as they allow, both ends kept; weights and noise as here. */
    Samples thinned(int most) {
        int n = size();
        if (n <= most) {
            return this;
        }
        int[] index = new int[most];
        int taken = 0;
        double step = Math.log(omega[n - 1] / omega[0]) / (most - 1);
        double wanted = Math.log(omega[0]);
        for (int i = 0; i < n - 1 && taken < most - 1; i++) {
            double here = Math.log(omega[i]);
            if (here >= wanted) {
                index[taken++] = i;
                wanted = Math.max(wanted + step, here + step / 2);
            }
        }
        index[taken++] = n - 1;
        int[] kept = Arrays.copyOf(index, taken);
        return new Samples(omegaScale, pick(omega, kept), pick(re, kept), pick(im, kept), pick(magnitude, kept),
                pick(weightRe, kept), pick(weightIm, kept),
                new NoiseEstimate(noise.typical(), pick(noise.byPoint(), kept), noise.credible()));
    }

    private static double[] pick(double[] values, int[] index) {
        double[] picked = new double[index.length];
        for (int i = 0; i < picked.length; i++) {
            picked[i] = values[index[i]];
        }
        return picked;
    }

    /** An error over the magnitude that the noise alone makes at this point now and then; 0 where no noise was seen. */
    double loudest(int index) {
        return noise.credible() ? noise.byPoint()[index] * (1 + Math.sqrt(2 * Math.log(size()))) : 0;
    }

    int size() {
        return omega.length;
    }
}
