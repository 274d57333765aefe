package org.stillrail.electrical.ripple;

import org.stillrail.electrical.capacitor.Require;

/**
 * Output current of a boost converter of equal, evenly spread phases: {@code D = 1 - Vin / Vo}.
 *
 * @param inductanceH of each phase
 * @param loadA       load current of all phases together
 * @param edgeS       length of both edges of the rectifier's current, shorter than the on and the off time
 */
public record BoostCurrent(
        double inputV, double outputV, double inductanceH, double switchingHz, int phases, double loadA, double edgeS)
        implements RectifierCurrent {

    public BoostCurrent {
        Require.positive("outputV", outputV);
        if (outputV <= inputV) {
            throw new IllegalArgumentException("outputV must be above inputV for a boost, not " + outputV + " V from " + inputV + " V");
        }
        RectifierCurrent.check(inputV, 1 - inputV / outputV, inductanceH, switchingHz, phases, loadA, edgeS);
    }

    @Override
    public double duty() {
        return 1 - inputV / outputV;
    }

    @Override
    public double turnsRatio() {
        return 1;
    }

    @Override
    public BoostCurrent withInputV(double newInputV) {
        return new BoostCurrent(newInputV, outputV, inductanceH, switchingHz, phases, loadA, edgeS);
    }
}
