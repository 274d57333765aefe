package org.stillrail.electrical.ripple;

import java.util.OptionalDouble;
import org.stillrail.electrical.capacitor.Require;

/**
 * The current of a rectifier that conducts while the main switch is off: nothing for the first share D of the period, then
 * the inductor's current, which falls in a straight line about the mean {@code Io / (N (1 - D))}. It takes the edge time from
 * nothing to its first value after the switch opens, and from its last value to nothing after the switch closes at t = 0.
 * Standard steady-state result, losses left out.
 */
public sealed interface RectifierCurrent extends ConverterCurrent permits BoostCurrent, InvertingCurrent, FlybackCurrent {

    /** Of each phase, on the side of the input, in H. */
    double inductanceH();

    /** Load current of all phases together, in A. */
    double loadA();

    /** Time that the current takes to pass from switch to rectifier and back; an inductance makes a spike of L di/dt of it. */
    double edgeS();

    /** Input turns to one output turn; 1 where there is a single winding. */
    double turnsRatio();

    /** Of the inductor, on the side of the input: {@code Vin D / (L f)}. */
    @Override
    default OptionalDouble inductorPeakToPeakA() {
        return OptionalDouble.of(inputV() * duty() / (inductanceH() * switchingHz()));
    }

    @Override
    default double continuousAboveA() {
        return phases() * (1 - duty()) * turnsRatio() * inductorPeakToPeakA().getAsDouble() / 2;
    }

    @Override
    default PiecewiseLinear waveform() {
        double period = periodS();
        double on = duty() * period;
        double mean = loadA() / (phases() * (1 - duty()));
        double half = turnsRatio() * inductorPeakToPeakA().getAsDouble() / 2;
        double[] times = {0, edgeS(), on, on + edgeS()};
        double[] currents = {mean - half, 0, 0, mean + half};
        return PiecewiseLinear.interleaved(PiecewiseLinear.of(period, times, currents, 4), phases());
    }

    /** Checks what all of them have in common; the message names the argument. */
    static void check(
            double inputV, double duty, double inductanceH, double switchingHz, int phases, double loadA, double edgeS) {
        Require.positive("inputV", inputV);
        Require.positive("inductanceH", inductanceH);
        Require.positive("switchingHz", switchingHz);
        Require.notNegative("loadA", loadA);
        Require.positive("edgeS", edgeS);
        ConverterCurrent.checkPhases(phases);
        double on = duty / switchingHz;
        double off = (1 - duty) / switchingHz;
        if (edgeS >= on || edgeS >= off) {
            throw new IllegalArgumentException("edgeS must be shorter than the on time of " + on + " s and the off time of " + off
                    + " s, not " + edgeS + " s");
        }
    }
}
