package org.stillrail.calculation;

import org.stillrail.electrical.Interruption;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.WrappedModel;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * A model that refuses to go on when its thread is interrupted. Every long loop of a calculation asks its models again and
 * again, so this ends the loop without the physics knowing of time limits.
 */
record Interruptible(ImpedanceModel inner) implements WrappedModel {

    @Override
    public void addImpedanceTo(FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm) {
        Interruption.check();
        inner.addImpedanceTo(grid, resistanceOhm, reactanceOhm);
    }

    @Override
    public ImpedancePoint at(double hz) {
        Interruption.check();
        return inner.at(hz);
    }
}
