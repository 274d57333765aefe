package org.stillrail.electrical.capacitor;

import java.util.Objects;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * A model whose capacitive part is bent by bias, temperature and age while ESR and ESL stay as they are:
 * {@code Z' = Z + (1 / k - 1) / (j w C0)}. With k the share of C0 that is left, the series capacitance at the frequency
 * of C0 becomes k C0.
 *
 * @param capacitanceF   C0, the series capacitance of {@code inner} at the test frequency
 * @param remainingShare k, positive; above 1 where capacitance is gained
 */
public record BentModel(ImpedanceModel inner, double capacitanceF, double remainingShare) implements WrappedModel {

    public BentModel {
        Objects.requireNonNull(inner, "inner");
        Require.positive("capacitanceF", capacitanceF);
        Require.positive("remainingShare", remainingShare);
    }

    @Override
    public void addImpedanceTo(FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm) {
        inner.addImpedanceTo(grid, resistanceOhm, reactanceOhm);
        double ohmHz = addedOhmHz();
        for (int i = 0; i < reactanceOhm.length; i++) {
            reactanceOhm[i] -= ohmHz / grid.hz(i);
        }
    }

    @Override
    public ImpedancePoint at(double hz) {
        double added = addedOhmHz() / hz;
        return inner.at(hz).plus(new ImpedancePoint(0, -added, 0, added / hz));
    }

    private double addedOhmHz() {
        return addedPerF() / (2 * Math.PI);
    }

    /** Elastance in series, in 1/F; negative where capacitance is gained. */
    double addedPerF() {
        return (1 / remainingShare - 1) / capacitanceF;
    }
}
