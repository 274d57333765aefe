package org.stillrail.electrical.fit;

import org.stillrail.electrical.fit.PartialFractions.Terms;

/**
 * The smallest order that reaches the tolerance: from no free pole upwards, each order starting from the poles of the one
 * before and a new one where that fit was worst (adding poles: S. Grivet-Talocia, M. Bandinu, IEEE Trans. Electromagnetic
 * Compatibility 48(1), 2006; from memory), and from lightly damped pairs where that start gets stuck.
 *
 * <p>Bounded: at most {@code STEPS} relocations a start and two starts an order.
 */
final class OrderSearch {

    private static final int STEPS = 8;
    /** A step that leaves more than this share of the error was not worth it; two in a row end the start. */
    private static final double STALLED = 0.8;
    /** Errors this small are rounding. */
    private static final double EXACT = 1e-9;
    /** Above this multiple of the tolerance a start is given up after {@code TRIAL} steps. */
    private static final double HOPELESS = 20;
    private static final int TRIAL = 3;
    /** An rms error this much over the estimated noise is still taken for noise. */
    private static final double AT_NOISE = 1.15;
    /** Most likeness of neighbouring errors that still passes for scatter. */
    private static final double SCATTER = 0.35;
    /** Noise above this is no excuse. */
    private static final double LOUD = 0.03;

    private final Samples samples;
    private final FitSettings settings;
    private final Terms terms;
    private final int highestFree;
    private int iterations;

    OrderSearch(Samples samples, FitSettings settings, Terms terms) {
        this.samples = samples;
        this.settings = settings;
        this.terms = terms;
        int afforded = (2 * samples.size() - 4) / 3;
        this.highestFree = Math.min(settings.maxOrder(), afforded) - (terms.poleAtZero() ? 1 : 0);
    }

    int iterations() {
        return iterations;
    }

    int highestFree() {
        return highestFree;
    }

    /** The fit with no free pole. */
    ResidueFit lowest() {
        return ResidueFit.of(samples, PoleSet.NONE, terms);
    }

    /** The best fit found with one free pole more than {@code previous}. */
    ResidueFit next(ResidueFit previous) {
        double first = samples.omega[0];
        double last = samples.omega[samples.size() - 1];
        int order = previous.poles.order() + 1;
        ResidueFit best = relocate(previous.poles.withRealNear(samples.omega[previous.error.worstAt()]));
        if (!reached(best) && order >= 4 && order % 2 == 0) {
            ResidueFit fresh = relocate(PoleSet.pairs(order, first, last));
            if (fresh.error.worst() < best.error.worst()) {
                best = fresh;
            }
        }
        return best;
    }

    boolean reached(ResidueFit fit) {
        return (fit.error.worst() <= settings.tolerance() || downAtNoise(fit.error))
                && fit.error.lossMiss() <= settings.lossTolerance();
    }

    /** Whether the error is no more than the noise of the points, and small enough for a model. */
    boolean downAtNoise(FitError error) {
        return samples.noise.credible() && samples.noise.typical() <= LOUD && error.overNoise() <= AT_NOISE
                && !error.outliers() && error.likeNeighbour() <= SCATTER;
    }

    private ResidueFit relocate(PoleSet start) {
        PoleSet poles = start;
        ResidueFit best = null;
        double before = Double.POSITIVE_INFINITY;
        int stalled = 0;
        for (int step = 1; step <= STEPS; step++) {
            PartialFractions basis = new PartialFractions(samples.omega, poles, terms);
            PoleSet moved = PoleRelocation.step(samples, poles, basis);
            iterations++;
            if (moved.order() != poles.order()) {
                break;
            }
            poles = moved;
            ResidueFit fit = ResidueFit.of(samples, poles, terms);
            if (best == null || fit.error.rms() < best.error.rms()) {
                best = fit;
            }
            if (reached(fit) || fit.error.worst() < EXACT) {
                return fit;
            }
            stalled = fit.error.rms() > STALLED * before ? stalled + 1 : 0;
            before = Math.min(before, fit.error.rms());
            if (stalled >= 2 || step >= TRIAL && before > HOPELESS * settings.tolerance()) {
                break;
            }
        }
        return best == null ? ResidueFit.of(samples, start, terms) : best;
    }

    /** Further relocations while the error falls by more than half: data without noise are met to rounding. */
    ResidueFit polish(ResidueFit fit) {
        ResidueFit best = fit;
        PoleSet poles = fit.poles;
        for (int step = 1; step <= STEPS; step++) {
            PoleSet moved = PoleRelocation.step(samples, poles, new PartialFractions(samples.omega, poles, terms));
            iterations++;
            if (moved.order() != poles.order()) {
                break;
            }
            poles = moved;
            ResidueFit next = ResidueFit.of(samples, poles, terms);
            if (!(next.error.rms() < 0.5 * best.error.rms())) {
                break;
            }
            best = next;
        }
        return best;
    }
}
