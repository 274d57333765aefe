package org.stillrail.electrical.step;

import java.util.Locale;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.fit.FitDidNotConvergeException;
import org.stillrail.electrical.fit.ModelFit;
import org.stillrail.electrical.fit.RationalFit;
import org.stillrail.electrical.fit.StateSpace;

/**
 * A branch of series-R-L-C parts exactly; any other model by its rational fit, count, mounting and shared path exactly. Where there
 * is no passive fit, its equivalent around the deciding frequency, and a sentence that says so.
 */
public final class FittedBranch implements BranchRealisation {

    /** A closed form is fitted this far below and above the deciding frequency. */
    private static final double SPAN = 1e4;

    private final BranchRealisation otherwise = new SeriesEquivalent();

    @Override
    public RealisedBranch realise(Branch branch, double aroundHz) {
        if (branch.part() instanceof SeriesRlc) {
            return otherwise.realise(branch, aroundHz);
        }
        RationalFit fit;
        try {
            fit = ModelFit.of(branch.part(), aroundHz / SPAN, aroundHz * SPAN);
        } catch (FitDidNotConvergeException | IllegalArgumentException none) {
            return instead(branch, aroundHz, none.getMessage());
        }
        if (!fit.passive()) {
            return instead(branch, aroundHz, String.join(" ", fit.remarks()));
        }
        double seriesOhm = branch.mounting().resistanceOhm() / branch.count() + branch.shared().resistanceOhm();
        double seriesH = branch.mounting().inductanceH() / branch.count() + branch.shared().inductanceH();
        StateSpace z = fit.stateSpace().inBranch(branch.count(), seriesOhm, seriesH);
        return new RealisedBranch(AdmittanceStateSpace.ofImpedance(z.a(), z.b(), z.c(), z.d(), z.e()),
                errorPercent(branch, fit, ModelFit.pointsOf(branch.part(), aroundHz / SPAN, aroundHz * SPAN)), null);
    }

    private RealisedBranch instead(Branch branch, double aroundHz, String why) {
        RealisedBranch equivalent = otherwise.realise(branch, aroundHz);
        return new RealisedBranch(equivalent.space(), equivalent.errorPercent(),
                String.format(Locale.ROOT, "%s. Branch '%s' has no passive fit: %s", equivalent.warning(), branch.label(), why));
    }

    /** Worst error of the branch, at the points fitted. */
    private static double errorPercent(Branch branch, RationalFit fit, FrequencyGrid grid) {
        double worst = 0;
        for (int i = 0; i < grid.size(); i++) {
            ImpedancePoint part = branch.part().at(grid.hz(i));
            ImpedancePoint whole = branch.at(grid.hz(i));
            Complex fitted = fit.function().at(grid.omega(i));
            double miss = Math.hypot(fitted.re() - part.resistanceOhm(), fitted.im() - part.reactanceOhm()) / branch.count();
            worst = Math.max(worst, miss / Math.hypot(whole.resistanceOhm(), whole.reactanceOhm()));
        }
        return 100 * worst;
    }
}
