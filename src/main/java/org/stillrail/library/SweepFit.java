package org.stillrail.library;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.Thinning;
import org.stillrail.electrical.fit.FitDidNotConvergeException;
import org.stillrail.electrical.fit.RationalFit;
import org.stillrail.electrical.fit.VectorFitting;
import org.stillrail.electrical.quality.CurveFindings;
import org.stillrail.electrical.quality.Finding;
import org.stillrail.web.Quantity;

/**
 * What can be worked out from the points of a sweep alone; it takes a moment.
 *
 * @param curve    what is drawn and fitted: the sweep, thinned where it is very long without losing a peak
 * @param fit      null where there is none
 * @param problem  why there is none, or null
 * @param findings of the points themselves
 */
record SweepFit(Curve curve, RationalFit fit, String problem, List<Finding> findings) {

    /** Twice as many as a screen has columns. */
    static final int MOST_POINTS_DRAWN = 4000;
    /** Of |Z|; more than noise that anyone would use. */
    private static final double MISSED = 0.1;

    /** @param pointsPerDecade that the team wants */
    static SweepFit of(Curve sweep, int pointsPerDecade) {
        Curve curve = Thinning.keepingPeaks(sweep, MOST_POINTS_DRAWN);
        List<Finding> findings = CurveFindings.of(sweep, pointsPerDecade);
        try {
            return new SweepFit(curve, VectorFitting.fit(Thinning.everySo(sweep, MOST_POINTS_DRAWN)), null, findings);
        } catch (IllegalArgumentException | FitDidNotConvergeException e) {
            return new SweepFit(curve, null, e.getMessage(), findings);
        }
    }

    /** What figures are read from: the fit, or the points where there is none; null for a single point. */
    ImpedanceModel model() {
        if (fit != null) {
            return fit.model();
        }
        return curve.size() < 2 ? null : TableModel.of(curve.grid().toArray(), curve.reals(), curve.imaginaries());
    }

    /** A fit close in |Z| can still miss the ESR of a good capacitor. */
    private String pointErrors() {
        return "At the points fitted it is off by " + Quantity.format(fit.worstRelativeErrorPercent(), "%", 2) + " of |Z| at most, and its resistance by "
                + Quantity.format(fit.worstResistanceErrorPercent(), "%", 2) + " of Re Z at most, which is the error of the ESR read there; the points' own noise is "
                + Quantity.format(fit.noisePercent(), "%", 2) + " of |Z|.";
    }

    /** A long sweep is fitted thinned: a peak of a few points may lie between those that were fitted. */
    private String largestError() {
        double[] r = new double[curve.size()];
        double[] x = new double[curve.size()];
        fit.model().addImpedanceTo(curve.grid(), r, x);
        int worst = 0;
        double most = 0;
        for (int i = 0; i < r.length; i++) {
            double share = Math.abs(Math.hypot(r[i], x[i]) / curve.magnitude(i) - 1);
            worst = share > most ? i : worst;
            most = Math.max(most, share);
        }
        return "Of all points that are drawn it misses |Z| by " + Quantity.format(100 * most, "%", 2) + " at most, at "
                + Quantity.format(curve.grid().hz(worst), "Hz", 3) + (most > MISSED ? ": it does not follow the sweep there." : ".");
    }

    /** The facts of the fit, in sentences. */
    List<String> words() {
        if (fit == null) {
            return List.of("There is no fit: " + problem);
        }
        List<String> words = new ArrayList<>();
        words.add("Order " + fit.order() + ". " + fit.stopReason().sentence());
        words.add(fit.passive() ? "Passive: its resistance is nowhere negative, at any frequency." : "Not passive, or not proven to be.");
        words.addAll(fit.remarks());
        words.add(pointErrors());
        words.add(largestError());
        return words;
    }
}
