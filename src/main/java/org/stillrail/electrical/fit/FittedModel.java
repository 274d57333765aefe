package org.stillrail.electrical.fit;

import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.FrequencyGrid;

/** A part by its rational fit, at every frequency; valid where it was fitted. */
public record FittedModel(RationalFit fit) implements ImpedanceModel {

    @Override
    public void addImpedanceTo(FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm) {
        for (int i = 0; i < resistanceOhm.length; i++) {
            Complex z = fit.function().at(grid.omega(i));
            resistanceOhm[i] += z.re();
            reactanceOhm[i] += z.im();
        }
    }

    @Override
    public ImpedancePoint at(double hz) {
        double omega = 2 * Math.PI * hz;
        Complex z = fit.function().at(omega);
        Complex slope = fit.function().slopeAt(omega);
        return new ImpedancePoint(z.re(), z.im(), 2 * Math.PI * slope.re(), 2 * Math.PI * slope.im());
    }

    @Override
    public double inductanceAtInfinityH() {
        return fit.proportional();
    }

    @Override
    public ValidRange validRange() {
        return fit.range();
    }
}
