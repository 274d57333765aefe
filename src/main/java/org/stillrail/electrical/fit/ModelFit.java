package org.stillrail.electrical.fit;

import java.util.Arrays;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/** The rational fit of any part's model: of its own points where it has points, else of samples of its closed form. */
public final class ModelFit {

    private static final int POINTS_PER_DECADE = 40;
    private static final int COARSE_POINTS_PER_DECADE = 10;
    private static final FitSettings COARSE = new FitSettings(0.02, 0.2, 4);

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
        FrequencyGrid grid = pointsOf(model, fromHz, toHz);
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        model.addImpedanceTo(grid, r, x);
        return VectorFitting.fit(new Curve(grid, r, x));
    }

    /**
     * A fit of few poles over a range, whatever points the model has: cheap in time, and within some per cent of |Z|.
     *
     * @throws FitDidNotConvergeException where that cannot be had
     */
    public static RationalFit coarse(ImpedanceModel model, double fromHz, double toHz) {
        FrequencyGrid grid = samples(model.validRange(), fromHz, toHz, COARSE_POINTS_PER_DECADE);
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        model.addImpedanceTo(grid, r, x);
        return VectorFitting.fit(new Curve(grid, r, x), COARSE);
    }

    /** The frequencies that {@link #of} fits at. */
    public static FrequencyGrid pointsOf(ImpedanceModel model, double fromHz, double toHz) {
        ValidRange range = model.validRange();
        double[] knots = Arrays.stream(model.knotsHz()).filter(range::contains).distinct().toArray();
        return knots.length >= VectorFitting.FEWEST_POINTS ? FrequencyGrid.of(knots) : samples(range, fromHz, toHz, POINTS_PER_DECADE);
    }

    private static FrequencyGrid samples(ValidRange range, double fromHz, double toHz, int pointsPerDecade) {
        ValidRange wanted = range.intersect(new ValidRange(fromHz, toHz));
        boolean overlap = wanted.toHz() > wanted.fromHz();
        double from = overlap ? wanted.fromHz() : fromHz;
        double to = overlap ? wanted.toHz() : toHz;
        int points = (int) Math.ceil(pointsPerDecade * Math.log10(to / from)) + 1;
        return FrequencyGrid.logSpaced(from, to, Math.max(VectorFitting.FEWEST_POINTS, points));
    }
}
