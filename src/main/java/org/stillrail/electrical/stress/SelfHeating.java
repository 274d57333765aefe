package org.stillrail.electrical.stress;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.stillrail.electrical.capacitor.Require;

/**
 * How warm a part becomes by its own losses. The losses go with the ESR and so with the temperature itself; the steady state
 * is the lowest temperature T with {@code T = Tambient + Rth P(T)}, the one that a part warming up from cold comes to.
 * It is sought in steps of one kelvin up to {@value #WIDEST_RISE_K} K over ambient and then bisected, so the work is bounded.
 *
 * @param coreC        null where there is no steady state
 * @param dissipationW at {@code coreC}, or at ambient where there is none; null where the rise comes from a rating
 * @param feedback     {@code Rth dP/dT} at the steady state: below 0 the part calms itself, towards 1 it comes near running away;
 *                     null where it is not known
 * @param estimated    whether an estimated thermal resistance is behind it
 * @param sentence     the result in words
 */
public record SelfHeating(double ambientC, Double coreC, Double dissipationW, Double feedback, boolean estimated, String sentence) {

    private static final int WIDEST_RISE_K = 200;
    private static final int BISECTIONS = 50;
    private static final double SLOPE_K = 0.01;
    private static final double NEAR_RUNAWAY = 0.5;
    private static final int DIGITS = 3;
    private static final double LEAST_WRITTEN_K = 0.1;

    /**
     * @param dissipationW losses in W at a core temperature in degC, with the same current at every temperature
     */
    public static SelfHeating of(double ambientC, ThermalResistance thermal, DoubleUnaryOperator dissipationW) {
        Require.finite("ambientC", ambientC);
        Objects.requireNonNull(thermal, "thermal");
        DoubleUnaryOperator surplusK = t -> ambientC + thermal.kelvinPerWatt() * dissipationW.applyAsDouble(t) - t;
        double cooler = ambientC;
        if (surplusK.applyAsDouble(cooler) <= 0) {
            return steady(ambientC, ambientC, thermal, dissipationW);
        }
        for (int step = 1; step <= WIDEST_RISE_K; step++) {
            double warmer = ambientC + step;
            if (surplusK.applyAsDouble(warmer) <= 0) {
                return steady(ambientC, bisect(surplusK, cooler, warmer), thermal, dissipationW);
            }
            cooler = warmer;
        }
        return runaway(ambientC, thermal, dissipationW.applyAsDouble(ambientC));
    }

    /**
     * From a datasheet's own figures: a known rise at the rated ripple current grows with the square of the current.
     *
     * @param ratedRiseK at {@code ratedA}
     */
    public static SelfHeating ofRating(double ambientC, double ratedRiseK, double equivalentA, double ratedA) {
        Require.finite("ambientC", ambientC);
        Require.notNegative("ratedRiseK", ratedRiseK);
        Require.notNegative("equivalentA", equivalentA);
        Require.positive("ratedA", ratedA);
        double share = equivalentA / ratedA;
        double rise = ratedRiseK * share * share;
        return new SelfHeating(ambientC, ambientC + rise, null, null, false, String.format(Locale.ROOT,
                "The core is %.1f K above the %.1f \u00b0C round it, by the rise of %.3g K at the rated ripple current.",
                rise, ambientC, ratedRiseK));
    }

    private static double bisect(DoubleUnaryOperator surplusK, double cooler, double warmer) {
        double low = cooler;
        double high = warmer;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (low + high) / 2;
            if (surplusK.applyAsDouble(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static SelfHeating steady(double ambientC, double coreC, ThermalResistance thermal, DoubleUnaryOperator dissipationW) {
        double watts = dissipationW.applyAsDouble(coreC);
        double slope = (dissipationW.applyAsDouble(coreC + SLOPE_K) - dissipationW.applyAsDouble(coreC - SLOPE_K)) / (2 * SLOPE_K);
        double feedback = thermal.kelvinPerWatt() * slope;
        String sentence = String.format(Locale.ROOT, "%s through %s K/W make the core %s warmer than the %.1f \u00b0C round it.",
                power(watts), digits(thermal.kelvinPerWatt()), rise(coreC - ambientC), ambientC);
        if (feedback > NEAR_RUNAWAY) {
            sentence += " The losses grow as it warms; it is near thermal runaway.";
        }
        return new SelfHeating(ambientC, coreC, watts, feedback, thermal.estimated(), sentence);
    }

    private static SelfHeating runaway(double ambientC, ThermalResistance thermal, double wattsAtAmbient) {
        return new SelfHeating(ambientC, null, wattsAtAmbient, null, thermal.estimated(), String.format(Locale.ROOT,
                "Thermal runaway: through %s K/W no steady temperature is found up to %d K above the %.1f \u00b0C round it.",
                digits(thermal.kelvinPerWatt()), WIDEST_RISE_K, ambientC));
    }

    private static String power(double watts) {
        return watts < 1 ? digits(1000 * watts) + " mW" : digits(watts) + " W";
    }

    private static String digits(double value) {
        return new BigDecimal(value).round(new MathContext(DIGITS)).stripTrailingZeros().toPlainString();
    }

    private static String rise(double kelvin) {
        return kelvin > 0 && kelvin < LEAST_WRITTEN_K / 2 ? "less than 0.1 K" : String.format(Locale.ROOT, "%.1f K", kelvin);
    }

    public boolean runsAway() {
        return coreC == null;
    }

    /** null where there is no steady state. */
    public Double riseK() {
        return coreC == null ? null : (Double) (coreC - ambientC);
    }
}
