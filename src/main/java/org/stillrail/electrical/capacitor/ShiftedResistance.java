package org.stillrail.electrical.capacitor;

import java.util.Objects;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * A model with a constant resistance added in series, or taken away: what a change of the series resistance by temperature
 * or age does. A constant resistance keeps a model causal.
 *
 * @param addedOhm negative to take away, which must leave Re Z positive
 */
public record ShiftedResistance(ImpedanceModel inner, double addedOhm) implements WrappedModel {

    public ShiftedResistance {
        Objects.requireNonNull(inner, "inner");
        Require.finite("addedOhm", addedOhm);
    }

    @Override
    public void addImpedanceTo(FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm) {
        inner.addImpedanceTo(grid, resistanceOhm, reactanceOhm);
        for (int i = 0; i < resistanceOhm.length; i++) {
            resistanceOhm[i] += addedOhm;
        }
    }

    @Override
    public ImpedancePoint at(double hz) {
        return inner.at(hz).plus(new ImpedancePoint(addedOhm, 0, 0, 0));
    }
}
