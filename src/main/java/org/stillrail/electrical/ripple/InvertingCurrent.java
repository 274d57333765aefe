package org.stillrail.electrical.ripple;

import org.stillrail.electrical.capacitor.Require;

/**
 * Output current of an inverting buck-boost converter of equal, evenly spread phases, positive towards the load:
 * {@code D = Vo / (Vin + Vo)}.
 *
 * @param outputV     size of the output voltage, positive
 * @param inductanceH of each phase
 * @param loadA       load current of all phases together
 * @param edgeS       length of both edges of the rectifier's current, shorter than the on and the off time
 */
public record InvertingCurrent(
        double inputV, double outputV, double inductanceH, double switchingHz, int phases, double loadA, double edgeS)
        implements RectifierCurrent {

    public InvertingCurrent {
        Require.positive("outputV", outputV);
        RectifierCurrent.check(inputV, outputV / (inputV + outputV), inductanceH, switchingHz, phases, loadA, edgeS);
    }

    @Override
    public double duty() {
        return outputV / (inputV + outputV);
    }

    @Override
    public double turnsRatio() {
        return 1;
    }

    @Override
    public InvertingCurrent withInputV(double newInputV) {
        return new InvertingCurrent(newInputV, outputV, inductanceH, switchingHz, phases, loadA, edgeS);
    }
}
