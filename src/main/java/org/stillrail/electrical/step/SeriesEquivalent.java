package org.stillrail.electrical.step;

import java.util.Locale;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * A branch of series-R-L-C parts exactly; any other model by the constant series R, L and C that have its impedance, and its
 * slope of reactance, at one frequency:
 *
 * <pre>
 * L = (dX/dw + X/w) / 2        1/C = w^2 (dX/dw - X/w) / 2
 * </pre>
 *
 * Where that gives no inductance or no capacitance above 0, the one that is left carries the whole reactance.
 */
public final class SeriesEquivalent implements BranchRealisation {

    /** The error is sought from a third of to three times the frequency, where the response is decided. */
    private static final double ERROR_SPAN = 3;
    private static final int ERROR_POINTS = 61;
    /** A branch that is all inductance at the frequency still holds charge below: a capacitance that resonates this far below. */
    private static final double FAR_BELOW = 100;

    @Override
    public RealisedBranch realise(Branch branch, double aroundHz) {
        double seriesR = branch.mounting().resistanceOhm() / branch.count() + branch.shared().resistanceOhm();
        if (branch.part() instanceof SeriesRlc part) {
            return new RealisedBranch(AdmittanceStateSpace.seriesRlc(part.capacitanceF() * branch.count(),
                    part.resistanceOhm() / branch.count() + seriesR, branch.inductanceAtInfinityH()), null, null, false);
        }
        SeriesRlc same = equivalent(branch.at(aroundHz), aroundHz);
        AdmittanceStateSpace space = AdmittanceStateSpace.seriesRlc(same.capacitanceF(), same.resistanceOhm(), same.inductanceH());
        String warning = String.format(Locale.ROOT, "Branch '%s' is not a series R-L-C model; in time it is replaced by %.4g F,"
                + " %.4g ohm and %.4g H, its equivalent around %.4g Hz",
                branch.label(), same.capacitanceF(), same.resistanceOhm(), same.inductanceH(), aroundHz);
        return new RealisedBranch(space, errorPercent(branch, same, aroundHz), warning, true);
    }

    /** The constant series R, L and C that have this impedance and slope of reactance at a frequency. */
    public static SeriesRlc equivalent(ImpedancePoint z, double hz) {
        double omega = 2 * Math.PI * hz;
        double slope = z.reactanceOhmPerHz() / (2 * Math.PI);
        double ratio = z.reactanceOhm() / omega;
        double inductanceH = (slope + ratio) / 2;
        double elastance = omega * omega * (slope - ratio) / 2;
        if (inductanceH < 0) {
            inductanceH = 0;
            elastance = -z.reactanceOhm() * omega;
        }
        if (!(elastance > 0)) {
            inductanceH = Math.max(ratio, 0);
            elastance = inductanceH * omega * omega / (FAR_BELOW * FAR_BELOW);
        }
        if (!(elastance > 0) || !Double.isFinite(elastance) || !Double.isFinite(inductanceH)) {
            throw new IllegalArgumentException("A branch has no equivalent series capacitance at " + hz + " Hz");
        }
        return new SeriesRlc(1 / elastance, Math.max(z.resistanceOhm(), 0), inductanceH);
    }

    private static double errorPercent(Branch branch, SeriesRlc same, double aroundHz) {
        FrequencyGrid grid = FrequencyGrid.logSpaced(aroundHz / ERROR_SPAN, aroundHz * ERROR_SPAN, ERROR_POINTS);
        Branch replaced = new Branch(branch.label(), 1, same, SeriesPath.NONE, SeriesPath.NONE);
        double worst = 0;
        for (int i = 0; i < grid.size(); i++) {
            ImpedancePoint z = branch.at(grid.hz(i));
            ImpedancePoint other = replaced.at(grid.hz(i));
            double error = Math.hypot(z.resistanceOhm() - other.resistanceOhm(), z.reactanceOhm() - other.reactanceOhm());
            worst = Math.max(worst, error / Math.hypot(z.resistanceOhm(), z.reactanceOhm()));
        }
        return 100 * worst;
    }
}
