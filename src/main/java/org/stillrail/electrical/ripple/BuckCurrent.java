package org.stillrail.electrical.ripple;

import java.util.OptionalDouble;
import org.stillrail.electrical.capacitor.Require;

/**
 * Sum of the inductor currents of a buck converter of equal phases, evenly spread: ideal switches, duty
 * {@code D = Vo / Vin}, continuous conduction, t = 0 at the turn-on of phase 1.
 *
 * <p>With N phases and {@code N D = m + d} (m whole), m + 1 phases are on for the first share d of each Nth of the period
 * and m for the rest, so the sum is a triangle of N times the frequency with slopes {@code ((m+1) Vin - N Vo) / L} and
 * {@code (m Vin - N Vo) / L}; it vanishes where N D is a whole number. Standard steady-state result.
 *
 * @param inductanceH of each phase
 * @param phases      1 or more
 */
public record BuckCurrent(double inputV, double outputV, double inductanceH, double switchingHz, int phases)
        implements PeriodicCurrent {

    /** At this distance of N D from a whole number the sum is a rounding residue. */
    private static final double WHOLE = 1e-12;

    public BuckCurrent {
        Require.positive("inputV", inputV);
        Require.positive("outputV", outputV);
        Require.positive("inductanceH", inductanceH);
        Require.positive("switchingHz", switchingHz);
        if (phases < 1) {
            throw new IllegalArgumentException("phases must be 1 or more, not " + phases);
        }
        if (outputV >= inputV) {
            throw new IllegalArgumentException("outputV must be below inputV for a buck, not " + outputV + " V from " + inputV + " V");
        }
    }

    public double duty() {
        return outputV / inputV;
    }

    @Override
    public double periodS() {
        return 1 / switchingHz;
    }

    @Override
    public double frequencyHz() {
        return switchingHz;
    }

    @Override
    public PiecewiseLinear waveform() {
        double on = phases * duty();
        double d = on - Math.floor(on);
        double period = periodS();
        if (d < WHOLE || d > 1 - WHOLE) {
            return PiecewiseLinear.of(period, new double[] {0, period / 2}, new double[] {0, 0}, 2);
        }
        double slice = period / phases;
        double rise = inputV * (1 - d) / inductanceH * d * slice;
        double[] time = new double[2 * phases];
        double[] current = new double[2 * phases];
        for (int k = 0; k < phases; k++) {
            time[2 * k] = k * slice;
            time[2 * k + 1] = (k + d) * slice;
            current[2 * k] = -rise / 2;
            current[2 * k + 1] = rise / 2;
        }
        return PiecewiseLinear.of(period, time, current, 2 * phases);
    }

    /** {@code Vo (1 - D) / (L f)}. */
    @Override
    public OptionalDouble inductorPeakToPeakA() {
        return OptionalDouble.of(outputV * (1 - duty()) / (inductanceH * switchingHz));
    }
}
