package org.stillrail.electrical.fit;

import java.util.Arrays;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/** The rational fit of any part's model: of its own points where it has points, else of samples of its closed form. */
public final class ModelFit {

    private static final int POINTS_PER_DECADE = 40;

    private ModelFit() {
    }

    /**
     * @param fromHz lowest frequency sampled of a closed form
     * @param toHz   highest
     * @throws IllegalArgumentException    see {@link VectorFitting#fit(Curve)}
     * @throws FitDidNotConvergeException see there
     */
    public static RationalFit of(ImpedanceModel model, double fromHz, double toHz) {
        if (model instanceof FittedModel fitted) {
            return fitted.fit();
        }
        ValidRange range = model.validRange();
        double[] knots = Arrays.stream(model.knotsHz()).filter(range::contains).distinct().toArray();
        FrequencyGrid grid = knots.length >= VectorFitting.FEWEST_POINTS ? FrequencyGrid.of(knots) : samples(range, fromHz, toHz);
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        model.addImpedanceTo(grid, r, x);
        return VectorFitting.fit(new Curve(grid, r, x));
    }

    private static FrequencyGrid samples(ValidRange range, double fromHz, double toHz) {
        ValidRange wanted = range.intersect(new ValidRange(fromHz, toHz));
        boolean overlap = wanted.toHz() > wanted.fromHz();
        double from = overlap ? wanted.fromHz() : fromHz;
        double to = overlap ? wanted.toHz() : toHz;
        int points = (int) Math.ceil(POINTS_PER_DECADE * Math.log10(to / from)) + 1;
        return FrequencyGrid.logSpaced(from, to, Math.max(VectorFitting.FEWEST_POINTS, points));
    }
}
