package org.stillrail.electrical.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillrail.electrical.Interruption;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.fit.PartialFractions.Terms;

/**
 * Fits an impedance by vector fitting with automatic order:
 * {@code Z(s) = R + s L + 1/(s C) + sum of r / (s - p)}, p stable, L and C not negative.
 *
 * <p>The impedance is fitted, not the admittance: a capacitor's tail, its series resistance and its series inductance are then
 * single terms, so few poles are left to describe losses, and mountings in series add exactly. The term {@code 1/(s C)},
 * a pole at exactly 0, is there when the points are capacitive at their low end (X below -|R|).
 *
 * <p>Deterministic and bounded; see {@link OrderSearch}, {@link PoleRelocation}, {@link Passivity}.
 */
public final class VectorFitting {

    /** Fewer points do not fix even R, L, C and one pole with something left to judge the fit by. */
    public static final int FEWEST_POINTS = 6;

    /** The promised error: what the passivity correction and noise may use up. */
    private static final double PROMISED = 0.01;
    /** A model with more rms error than this is none. */
    private static final double USELESS = 0.05;
    /** An order this close to the best rms error is as good. */
    private static final double AS_GOOD = 1.1;
    /** Further orders tried when the correction for passivity spoils a fit. */
    private static final int MORE_FOR_PASSIVITY = 3;
    private static final int LOOK_AHEAD = 2;
    /** One more pole that takes the error to this share of itself was no approximation but the truth. */
    private static final double EXACTLY_RATIONAL = 1e-3;
    private static final double ROUNDING = 1e-8;
    /** So many orders without an improvement end the search. */
    private static final int PLATEAU = 4;
    /** Poles are sought on at most so many points, evenly over log f; residues and errors use all. */
    private static final int MOST_POINTS_FOR_POLES = 1000;

    private VectorFitting() {
    }

    public static RationalFit fit(Curve impedance) {
        return fit(impedance, FitSettings.DEFAULT);
    }

    /**
     * @param impedance in ohm
     * @throws IllegalArgumentException    under {@link #FEWEST_POINTS} points, or a point that is 0 or not finite
     * @throws FitDidNotConvergeException when the best fit is too bad to stand for the points
     */
    public static RationalFit fit(Curve impedance, FitSettings settings) {
        check(impedance);
        return new Run(impedance, Samples.of(impedance, settings.tolerance()), settings).result();
    }

    /** The nearest stable fit, passive or not, good or not, weighing as {@code samples} do. */
    static ResidueFit nearest(Curve impedance, Samples samples) {
        return new Run(impedance, samples, FitSettings.DEFAULT).nearest();
    }

    static void check(Curve impedance) {
        if (impedance.size() < FEWEST_POINTS) {
            throw new IllegalArgumentException("A fit needs at least " + FEWEST_POINTS + " points, not " + impedance.size());
        }
        for (int i = 0; i < impedance.size(); i++) {
            double magnitude = impedance.magnitude(i);
            if (!(magnitude > 0) || Double.isInfinite(magnitude)) {
                throw new IllegalArgumentException("A fit needs a finite impedance other than 0 at every point; at "
                        + impedance.grid().hz(i) + " Hz it is " + impedance.real(i) + " + j " + impedance.imaginary(i) + " ohm");
            }
        }
    }

    /** One fit from the points to the result. */
    private static final class Run {

        private final Curve curve;
        private final Samples samples;
        private final Samples thinned;
        private final FitSettings settings;
        private final OrderSearch search;
        private final List<ResidueFit> tried = new ArrayList<>();

        Run(Curve curve, Samples samples, FitSettings settings) {
            this.curve = curve;
            this.settings = settings;
            this.samples = samples;
            this.thinned = samples.thinned(MOST_POINTS_FOR_POLES);
            this.search = new OrderSearch(thinned, settings, new Terms(true, capacitiveBelow(curve)));
        }

        ResidueFit nearest() {
            ResidueFit fit = search.lowest();
            ResidueFit best = fit;
            tried.add(fit);
            while (!search.reached(fit) && fit.poles.order() < search.highestFree() && !plateau()) {
                fit = search.next(fit);
                tried.add(fit);
                best = fit.error.rms() < best.error.rms() ? fit : best;
            }
            return onAllPoints(best);
        }

        RationalFit result() {
            ResidueFit fit = search.lowest();
            tried.add(fit);
            ResidueFit unenforced = null;
            int extra = 0;
            while (true) {
                Interruption.check();
                if (search.reached(fit)) {
                    fit = unenforced == null ? lookingAhead(search.polish(fit)) : search.polish(fit);
                    ResidueFit full = onAllPoints(fit);
                    ResidueFit passive = PassivityEnforcement.of(samples, full);
                    if (passive != null && promised(passive)) {
                        return report(passive, reason(passive), true);
                    }
                    unenforced = unenforced == null ? full : unenforced;
                    extra++;
                }
                if (fit.poles.order() >= search.highestFree() || extra > MORE_FOR_PASSIVITY || plateau()) {
                    break;
                }
                fit = search.next(fit);
                tried.add(fit);
            }
            return unenforced == null ? bestOfTried() : report(unenforced, reason(unenforced), false);
        }

        /**
         * The fit, or one with up to {@code LOOK_AHEAD} more poles: where that meets the points to rounding, because they are
         * rational, or where noise allowed an error above the promised one and that brings it below.
         */
        private ResidueFit lookingAhead(ResidueFit fit) {
            double worst = fit.error.worst();
            boolean overPromised = worst > PROMISED;
            boolean atNoise = worst > settings.tolerance();
            if (worst < ROUNDING || atNoise && !overPromised) {
                return fit;
            }
            ResidueFit ahead = fit;
            for (int i = 0; i < LOOK_AHEAD && ahead.poles.order() < search.highestFree(); i++) {
                ahead = search.next(ahead);
                boolean exact = ahead.error.worst() < EXACTLY_RATIONAL * worst;
                if (exact || overPromised && ahead.error.worst() <= PROMISED) {
                    return search.polish(ahead);
                }
            }
            return fit;
        }

        /** Usable, and the last orders brought nothing: what is left is not rational. */
        private boolean plateau() {
            int n = tried.size();
            if (n <= PLATEAU) {
                return false;
            }
            double before = Double.POSITIVE_INFINITY;
            double lately = Double.POSITIVE_INFINITY;
            for (int i = 0; i < n; i++) {
                double rms = tried.get(i).error.rms();
                before = i < n - PLATEAU ? Math.min(before, rms) : before;
                lately = i < n - PLATEAU ? lately : Math.min(lately, rms);
            }
            return before <= USELESS && before <= AS_GOOD * lately;
        }

        private StopReason reason(ResidueFit fit) {
            return fit.error.worst() <= settings.tolerance() ? StopReason.TOLERANCE : StopReason.NOISE;
        }

        private boolean promised(ResidueFit fit) {
            return fit.error.worst() <= Math.max(PROMISED, settings.tolerance()) || search.downAtNoise(fit.error);
        }

        private RationalFit bestOfTried() {
            double least = Double.POSITIVE_INFINITY;
            for (ResidueFit fit : tried) {
                least = Math.min(least, fit.error.rms());
            }
            double limit = AS_GOOD * least;
            ResidueFit chosen = tried.stream().filter(fit -> fit.error.rms() <= limit).findFirst().orElse(tried.get(0));
            ResidueFit full = onAllPoints(chosen);
            if (!(full.error.rms() <= USELESS)) {
                throw new FitDidNotConvergeException(full.order(), 100 * full.error.rms());
            }
            ResidueFit passive = PassivityEnforcement.of(samples, full);
            boolean taken = passive != null && passive.error.rms() <= Math.max(AS_GOOD * full.error.rms(), settings.tolerance());
            return report(taken ? passive : full, StopReason.NO_BETTER, taken);
        }

        private ResidueFit onAllPoints(ResidueFit fit) {
            return thinned == samples ? fit : ResidueFit.of(samples, fit.poles, fit.terms);
        }

        private RationalFit report(ResidueFit fit, StopReason reason, boolean passive) {
            RationalFunction function = fit.function().stretched(samples.omegaScale);
            List<String> remarks = new ArrayList<>();
            if (reason != StopReason.TOLERANCE) {
                remarks.add(reason.sentence());
            }
            if (!passive) {
                remarks.add(activeSentence(fit));
            }
            FitError error = fit.error;
            return new RationalFit(function, 100 * error.worst(), 100 * error.rms(), 100 * error.worstResistance(),
                    100 * samples.noise.typical(), passive, function.stable(), function.order(), search.iterations(), reason, remarks,
                    new ValidRange(curve.grid().startHz(), curve.grid().stopHz()));
        }

        private String activeSentence(ResidueFit fit) {
            List<Passivity.Violation> violations = Passivity.of(fit.function()).violations();
            if (violations.isEmpty()) {
                return "Whether the fit is passive could not be checked.";
            }
            Passivity.Violation first = violations.get(0);
            double toHz = samples.omegaScale / (2 * Math.PI);
            return String.format(Locale.ROOT, "The fit is not passive: Re Z is negative from %.4g Hz to %.4g Hz, down to %.3g ohm, "
                            + "and no small correction mends that.%s",
                    first.fromOmega() * toHz, first.toOmega() * toHz, first.worstRe(), pointsAreActive() ? " The points themselves are so." : "");
        }

        private boolean pointsAreActive() {
            for (int i = 0; i < samples.size(); i++) {
                if (samples.re[i] < -samples.loudest(i) * samples.magnitude[i]) {
                    return true;
                }
            }
            return false;
        }
    }

    /** Judged on the three lowest points together. */
    private static boolean capacitiveBelow(Curve curve) {
        double r = 0;
        double x = 0;
        for (int i = 0; i < 3; i++) {
            r += Math.abs(curve.real(i));
            x += curve.imaginary(i);
        }
        return x < -r;
    }
}
