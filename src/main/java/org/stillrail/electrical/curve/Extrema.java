package org.stillrail.electrical.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Finds every local minimum and maximum of |Z| strictly inside a range.
 *
 * <p>The sign of {@code d|Z|^2/df} is looked at on {@value #POINTS_PER_DECADE} points a decade and at every knot. Between
 * two of them ln|Z|^2 over ln f is compared with the cubic through both ends and both slopes; where the middle lies off
 * that cubic, something sharp is hidden and the span is halved, down to {@value #NARROWEST} of the frequency. So a pair
 * of a minimum and a maximum that fits between two scan points is seen too. A change of sign is then closed in on to the
 * last digits. At a knot of a table the slope jumps; a change of sign across the jump is an extremum at the knot itself,
 * and its Q uses the mean of the slopes of the phase on both sides.
 *
 * <p>A flat stretch is neither a minimum nor a maximum.
 */
public final class Extrema {

    private static final int POINTS_PER_DECADE = 240;
    private static final double NARROWEST = 1e-10;
    private static final double OFF_CUBIC = 1e-7;
    private static final int MOST_HALVINGS = 200_000;
    private static final double NUDGE = 1 + 1e-4;
    /** Where the slope at a knot itself is 0, as where a reactance crosses 0 there, its sign is taken from just beside it. */
    private static final double BESIDE = 1 + 1e-9;
    /** An extremum this near to an end of the range, relative, counts as on it and not inside. */
    private static final double ON_THE_EDGE = 1e-12;

    private final double fromHz;
    private final double toHz;
    private final DoubleFunction<? extends SlopedPoint> curve;
    private final List<Extremum> found = new ArrayList<>();
    private int halvings;

    private Extrema(double fromHz, double toHz, DoubleFunction<? extends SlopedPoint> curve) {
        this.fromHz = fromHz;
        this.toHz = toHz;
        this.curve = curve;
    }

    /**
     * @param curve   value and slope at a frequency in Hz; at a knot the slope towards higher frequency
     * @param knotsHz where the slope may jump, in any order; those outside the range are ignored
     * @return ascending in frequency
     */
    public static List<Extremum> between(
            double fromHz, double toHz, double[] knotsHz, DoubleFunction<? extends SlopedPoint> curve) {
        if (!(fromHz > 0) || !(toHz > fromHz) || Double.isInfinite(toHz)) {
            throw new IllegalArgumentException("Extrema need 0 < from < to, not " + fromHz + " Hz to " + toHz + " Hz");
        }
        Extrema extrema = new Extrema(fromHz, toHz, curve);
        extrema.search(knotsHz);
        return List.copyOf(extrema.found);
    }

    private void search(double[] knotsHz) {
        double[] knots = Arrays.stream(knotsHz).filter(f -> f > fromHz && f < toHz).sorted().distinct().toArray();
        double previous = fromHz;
        for (int i = 0; i <= knots.length; i++) {
            double next = i < knots.length ? knots[i] : toHz;
            Sample end = smoothSpan(previous, next);
            if (i < knots.length) {
                kink(end, sample(next));
            }
            previous = next;
        }
    }

    /** Scans between two knots, where the curve is smooth; returns the left-sided sample at the upper end. */
    private Sample smoothSpan(double lowHz, double highHz) {
        int steps = Math.max(1, (int) Math.ceil(Math.log10(highHz / lowHz) * POINTS_PER_DECADE));
        double ratio = Math.pow(highHz / lowHz, 1.0 / steps);
        Sample end = sample(Math.nextDown(highHz));
        Sample a = sample(lowHz);
        double hz = lowHz;
        for (int i = 1; i < steps; i++) {
            hz *= ratio;
            Sample b = sample(hz);
            if (b.slope == 0) {
                b = sample(hz * NUDGE);
            }
            span(a, b);
            a = b;
        }
        span(a, end);
        return end;
    }

    private void span(Sample a, Sample b) {
        double width = b.logHz - a.logHz;
        if (!(width > 0)) {
            return;
        }
        if (width > NARROWEST) {
            Sample middle = sample(Math.sqrt(a.hz) * Math.sqrt(b.hz));
            if (halvings < MOST_HALVINGS && !(offCubic(a, middle, b) <= OFF_CUBIC)) {
                halvings++;
                span(a, middle);
                joint(a, middle, b);
                span(middle, b);
                return;
            }
        }
        if (a.slope * b.slope < 0) {
            smoothExtremum(a, b);
        }
    }

    /** A halving point that happens to be the extremum itself, so that neither half shows a change of sign. */
    private void joint(Sample a, Sample middle, Sample b) {
        if (middle.slope == 0 && a.slope * b.slope < 0) {
            add(a.slope < 0, middle.hz, middle.squared, middle.quality());
        }
    }

    private static double offCubic(Sample a, Sample middle, Sample b) {
        double width = b.logHz - a.logHz;
        double cubic = (a.logSquared + b.logSquared) / 2 + width * (a.logSlope() - b.logSlope()) / 8;
        return Math.abs(middle.logSquared - cubic);
    }

    /** Bisection on the sign, sped up by the false position with the halved weight of the stale end (Illinois). */
    private void smoothExtremum(Sample a, Sample b) {
        boolean minimum = a.slope < 0;
        double lowHz = a.hz;
        double highHz = b.hz;
        double lowSlope = a.slope;
        double highSlope = b.slope;
        Sample best = a;
        for (int i = 0; i < 200 && highHz - lowHz > 2 * Math.ulp(highHz); i++) {
            double hz = i % 3 == 2
                    ? 0.5 * (lowHz + highHz)
                    : lowHz + (highHz - lowHz) * (lowSlope / (lowSlope - highSlope));
            if (!(hz > lowHz) || !(hz < highHz)) {
                hz = 0.5 * (lowHz + highHz);
            }
            best = sample(hz);
            if (best.slope == 0) {
                break;
            }
            if (best.slope < 0 == minimum) {
                lowHz = hz;
                lowSlope = best.slope;
                highSlope /= 2;
            } else {
                highHz = hz;
                highSlope = best.slope;
                lowSlope /= 2;
            }
        }
        add(minimum, best.hz, best.squared, best.quality());
    }

    private void kink(Sample left, Sample right) {
        double before = left.slope != 0 ? left.slope : sample(left.hz * (2 - BESIDE)).slope;
        double after = right.slope != 0 ? right.slope : sample(right.hz * BESIDE).slope;
        if (before * after < 0) {
            double meanSlope = (left.phaseSlope + right.phaseSlope) / 2;
            double quality = right.lossless ? Double.POSITIVE_INFINITY : right.hz / 2 * Math.abs(meanSlope);
            add(before < 0, right.hz, right.squared, quality);
        }
    }

    private void add(boolean minimum, double hz, double squared, double quality) {
        if (hz <= fromHz * (1 + ON_THE_EDGE) || hz >= toHz * (1 - ON_THE_EDGE)) {
            return;
        }
        found.add(new Extremum(minimum ? Extremum.Kind.MINIMUM : Extremum.Kind.MAXIMUM, hz, Math.sqrt(squared), quality));
    }

    private Sample sample(double hz) {
        return new Sample(hz, curve.apply(hz));
    }

    private static final class Sample {

        private final double hz;
        private final double logHz;
        private final double squared;
        private final double logSquared;
        private final double slope;
        private final double phaseSlope;
        private final boolean lossless;

        private Sample(double hz, SlopedPoint z) {
            this.hz = hz;
            this.logHz = Math.log(hz);
            this.squared = z.squaredMagnitude();
            this.logSquared = Math.log(squared);
            this.slope = z.magnitudeSlope();
            this.phaseSlope = z.phaseSlope();
            this.lossless = z.re() == 0;
        }

        /** d ln|Z|^2 / d ln f. */
        private double logSlope() {
            return 2 * slope * hz / squared;
        }

        private double quality() {
            return lossless ? Double.POSITIVE_INFINITY : hz / 2 * Math.abs(phaseSlope);
        }
    }
}
