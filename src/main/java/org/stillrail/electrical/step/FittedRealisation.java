package org.stillrail.electrical.step;

import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.fit.FitDidNotConvergeException;
import org.stillrail.electrical.fit.ModelFit;
import org.stillrail.electrical.fit.RationalFit;
import org.stillrail.electrical.fit.StateSpace;

/**
 * A branch of series-R-L-C parts exactly, any other through the rational fit of its part, with mountings and shared path added
 * as they are. Where no passive fit is found the series equivalent takes its place, and the warning says so.
 */
public final class FittedRealisation implements BranchRealisation {

    /** A closed form is sampled from this factor below the deciding frequency to this factor above it. */
    private static final double SPAN = 1000;
    private static final double WORTH_A_WARNING_PERCENT = 1;

    private final SeriesEquivalent equivalent = new SeriesEquivalent();

    @Override
    public RealisedBranch realise(Branch branch, double aroundHz) {
        if (branch.part() instanceof SeriesRlc) {
            return equivalent.realise(branch, aroundHz);
        }
        try {
            RationalFit fit = ModelFit.of(branch.part(), aroundHz / SPAN, aroundHz * SPAN);
            return fit.passive() ? fitted(branch, fit) : instead(branch, aroundHz, "its fit is not passive");
        } catch (FitDidNotConvergeException | IllegalArgumentException e) {
            return instead(branch, aroundHz, e.getMessage());
        }
    }

    private static RealisedBranch fitted(Branch branch, RationalFit fit) {
        double resistance = branch.mounting().resistanceOhm() / branch.count() + branch.shared().resistanceOhm();
        double inductance = branch.mounting().inductanceH() / branch.count() + branch.shared().inductanceH();
        StateSpace space = fit.stateSpace().inBranch(branch.count(), resistance, inductance);
        String warning = fit.worstRelativeErrorPercent() > WORTH_A_WARNING_PERCENT
                ? "Branch '" + branch.label() + "' is followed by its rational fit; " + String.join(" ", fit.remarks())
                : null;
        return new RealisedBranch(
                AdmittanceStateSpace.ofImpedance(space.a(), space.b(), space.c(), space.d(), space.e()),
                fit.worstRelativeErrorPercent(), warning);
    }

    private RealisedBranch instead(Branch branch, double aroundHz, String why) {
        RealisedBranch series = equivalent.realise(branch, aroundHz);
        return new RealisedBranch(series.space(), series.errorPercent(), series.warning() + ": " + why);
    }
}
