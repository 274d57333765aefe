package org.stillrail.electrical.fit;

import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * A model known between two frequencies, continued by its rational fit outside them. The joints are closed: above, the fit
 * is bent by a factor on its resistance and an inductance in series; below, by a factor on its resistance and a capacitance
 * in series, each chosen so that resistance and reactance meet the known value at the edge. Where one of the two
 * resistances is not positive, the resistance is left as fitted.
 *
 * @param inside  exact between its {@link ImpedanceModel#validRange()} ends, which must be positive and finite
 * @param outside the fit of the same part
 */
public final class ContinuedModel implements ImpedanceModel {

    private final ImpedanceModel inside;
    private final FittedModel outside;
    private final ValidRange known;
    private final double factorBelow;
    private final double factorAbove;
    /** Reactance to add at the lower edge, falling as 1/f. */
    private final double reactanceBelowOhm;
    private final double inductanceAboveH;

    public ContinuedModel(ImpedanceModel inside, FittedModel outside) {
        this.inside = inside;
        this.outside = outside;
        this.known = inside.validRange();
        if (!(known.fromHz() > 0) || !(known.toHz() > known.fromHz()) || Double.isInfinite(known.toHz())) {
            throw new IllegalArgumentException("Only a model with two ends can be continued, not one from " + known.fromHz() + " Hz to "
                    + known.toHz() + " Hz");
        }
        ImpedancePoint low = inside.at(known.fromHz());
        ImpedancePoint lowFit = outside.at(known.fromHz());
        ImpedancePoint high = inside.at(known.toHz());
        ImpedancePoint highFit = outside.at(known.toHz());
        this.factorBelow = factor(low, lowFit);
        this.factorAbove = factor(high, highFit);
        this.reactanceBelowOhm = low.reactanceOhm() - lowFit.reactanceOhm();
        this.inductanceAboveH = (high.reactanceOhm() - highFit.reactanceOhm()) / (2 * Math.PI * known.toHz());
    }

    private static double factor(ImpedancePoint wanted, ImpedancePoint fitted) {
        boolean bothPositive = wanted.resistanceOhm() > 0 && fitted.resistanceOhm() > 0;
        return bothPositive ? wanted.resistanceOhm() / fitted.resistanceOhm() : 1;
    }

    @Override
    public void addImpedanceTo(FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm) {
        int n = resistanceOhm.length;
        double[] r = new double[n];
        double[] x = new double[n];
        inside.addImpedanceTo(grid, r, x);
        for (int i = 0; i < n; i++) {
            if (known.contains(grid.hz(i))) {
                resistanceOhm[i] += r[i];
                reactanceOhm[i] += x[i];
            } else {
                ImpedancePoint point = at(grid.hz(i));
                resistanceOhm[i] += point.resistanceOhm();
                reactanceOhm[i] += point.reactanceOhm();
            }
        }
    }

    @Override
    public ImpedancePoint at(double hz) {
        if (known.contains(hz)) {
            return inside.at(hz);
        }
        ImpedancePoint fitted = outside.at(hz);
        boolean below = hz < known.fromHz();
        double factor = below ? factorBelow : factorAbove;
        double added = below ? reactanceBelowOhm * known.fromHz() / hz : 2 * Math.PI * hz * inductanceAboveH;
        double addedPerHz = below ? -added / hz : added / hz;
        return new ImpedancePoint(factor * fitted.resistanceOhm(), fitted.reactanceOhm() + added,
                factor * fitted.resistanceOhmPerHz(), fitted.reactanceOhmPerHz() + addedPerHz);
    }

    @Override
    public double inductanceAtInfinityH() {
        return outside.inductanceAtInfinityH() + inductanceAboveH;
    }

    @Override
    public double[] knotsHz() {
        return inside.knotsHz();
    }

    @Override
    public ValidRange validRange() {
        return known;
    }
}
