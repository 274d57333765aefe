package org.stillrail.electrical.capacitor;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.stillrail.electrical.curve.Hertz;

/**
 * What a datasheet says of a capacitor's loss, and the {@link DatasheetModel} that follows from it.
 *
 * <p>With {@code X = 1 / (w1 C)} at the loss tangent's frequency f1 and {@code x = f2 / f1}, the two figures say
 * <pre>
 * tan d X = R0 + X cot(pi a / 2)          R(f2) = R0 + X cot(pi a / 2) x^-a
 * </pre>
 * Their difference falls steadily with a, so a is found by bisection and R0 follows. Inductance is left out of both.
 * <ul>
 * <li>R0 would be negative: R0 = 0, the figure of the higher frequency is kept, the other dropped with a warning.
 * <li>The resistance rises with frequency, which this model cannot do: a = 1, the higher-frequency figure is kept as R0,
 *     the other dropped with a warning. So too where both figures are of one frequency and differ; the resistance is kept.
 * <li>Only the loss tangent: R0 = 0, all loss in the dielectric, with a warning. Only the resistance: a = 1, all loss in R0.
 * <li>Neither: an ideal capacitance.
 * </ul>
 *
 * @param capacitanceF           series capacitance at {@code lossTangentFrequencyHz}
 * @param lossTangent            ESR over |X| at {@code lossTangentFrequencyHz}, zero or positive, or null
 * @param lossTangentFrequencyHz positive; the frequency of the capacitance too
 * @param resistanceOhm          ESR at {@code resistanceFrequencyHz}, zero or positive, or null
 * @param resistanceFrequencyHz  positive, or null when {@code resistanceOhm} is null
 */
public record LossFigures(
        double capacitanceF, Double lossTangent, double lossTangentFrequencyHz, Double resistanceOhm, Double resistanceFrequencyHz) {

    private static final double SAME = 1e-9;

    public LossFigures {
        Require.positive("capacitanceF", capacitanceF);
        Require.positive("lossTangentFrequencyHz", lossTangentFrequencyHz);
        if (lossTangent != null) {
            Require.notNegative("lossTangent", lossTangent);
        }
        if (resistanceOhm != null) {
            Require.notNegative("resistanceOhm", resistanceOhm);
            if (resistanceFrequencyHz == null) {
                throw new IllegalArgumentException("resistanceFrequencyHz is needed where resistanceOhm is given");
            }
            Require.positive("resistanceFrequencyHz", resistanceFrequencyHz);
        }
    }

    DatasheetModel solve(double inductanceH) {
        if (lossTangent == null) {
            return model(1, resistanceOhm == null ? 0 : resistanceOhm, inductanceH, null);
        }
        if (resistanceOhm == null) {
            return model(exponentOfTangent(), 0, inductanceH, lossTangent == 0 ? null
                    : "Only the loss tangent at " + Hertz.words(lossTangentFrequencyHz) + " is known, so all loss is taken to be in the "
                            + "dielectric; the real ESR well above that frequency is higher.");
        }
        return solveBoth(inductanceH);
    }

    private DatasheetModel solveBoth(double inductanceH) {
        double x = reactance();
        double ratio = resistanceFrequencyHz / lossTangentFrequencyHz;
        double tangentOhm = lossTangent * x;
        boolean tangentIsLower = ratio >= 1;
        double lower = tangentIsLower ? tangentOhm : resistanceOhm;
        double higher = tangentIsLower ? resistanceOhm : tangentOhm;
        if (Math.abs(lower - higher) <= SAME * higher) {
            return model(1, higher, inductanceH, null);
        }
        if (lower < higher || ratio == 1) {
            return model(1, higher, inductanceH, dropped(tangentIsLower, "the resistance would have to rise with frequency"));
        }
        double fall = lower - higher;
        double a = bisect(e -> x * cotangent(e) * Math.abs(1 - Math.pow(ratio, -e)), fall);
        double r0 = a > 0 ? tangentOhm - x * cotangent(a) : -1;
        if (r0 >= 0) {
            return model(a, r0, inductanceH, null);
        }
        double kept = tangentIsLower ? bisect(e -> x * cotangent(e) * Math.pow(ratio, -e), higher) : exponentOfTangent();
        return model(kept, 0, inductanceH, dropped(tangentIsLower, "a part of the loss would have to be negative"));
    }

    private String dropped(boolean tangent, String why) {
        String name = tangent
                ? "loss tangent at " + Hertz.words(lossTangentFrequencyHz)
                : "resistance at " + Hertz.words(resistanceFrequencyHz);
        return "The " + name + " was dropped: with both loss figures " + why + ".";
    }

    private double reactance() {
        return 1 / (2 * Math.PI * lossTangentFrequencyHz * capacitanceF);
    }

    private double exponentOfTangent() {
        return 1 - 2 / Math.PI * Math.atan(lossTangent);
    }

    private DatasheetModel model(double a, double r0, double inductanceH, String warning) {
        double omega = 2 * Math.PI * lossTangentFrequencyHz;
        double constantPhase = a == 1
                ? capacitanceF
                : capacitanceF * Math.pow(omega, 1 - a) * Math.sin(Math.PI / 2 * a);
        return new DatasheetModel(r0, inductanceH, constantPhase, a, warning == null ? List.of() : List.of(warning));
    }

    private static double cotangent(double a) {
        return Math.tan(Math.PI / 2 * (1 - a));
    }

    /** The a in (0, 1) where a falling function takes a value, or 0 where it never is as large. */
    private static double bisect(DoubleUnaryOperator falling, double value) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 200; i++) {
            double middle = 0.5 * (low + high);
            if (middle == low || middle == high) {
                break;
            }
            if (falling.applyAsDouble(middle) > value) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
