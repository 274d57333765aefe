package org.stillrail.electrical.ripple;

import org.stillrail.electrical.capacitor.Require;

/**
 * Secondary current of a flyback converter of equal, evenly spread phases, with n primary turns to one secondary turn:
 * {@code D = n Vo / (Vin + n Vo)}. The leakage is left out but for the edges that it makes.
 *
 * @param inductanceH magnetising inductance of each phase, seen from the primary
 * @param turnsRatio  n
 * @param loadA       load current of all phases together
 * @param edgeS       time that the current takes to pass from one winding to the other, shorter than the on and the off time
 */
public record FlybackCurrent(
        double inputV, double outputV, double inductanceH, double turnsRatio, double switchingHz, int phases, double loadA,
        double edgeS)
        implements RectifierCurrent {

    public FlybackCurrent {
        Require.positive("outputV", outputV);
        Require.positive("turnsRatio", turnsRatio);
        double reflected = turnsRatio * outputV;
        RectifierCurrent.check(inputV, reflected / (inputV + reflected), inductanceH, switchingHz, phases, loadA, edgeS);
    }

    @Override
    public double duty() {
        double reflected = turnsRatio * outputV;
        return reflected / (inputV + reflected);
    }

    @Override
    public FlybackCurrent withInputV(double newInputV) {
        return new FlybackCurrent(newInputV, outputV, inductanceH, turnsRatio, switchingHz, phases, loadA, edgeS);
    }
}
