package org.stillrail.electrical.step;

import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.AddedInSeries;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.fit.FitDidNotConvergeException;
import org.stillrail.electrical.fit.ModelFit;
import org.stillrail.electrical.fit.RationalFit;
import org.stillrail.electrical.fit.StateSpace;

/**
 * A branch of series-R-L-C parts exactly; any other model by its rational fit, count, mounting and shared path exactly. What bias,
 * temperature and age add in series is added to the fit of the part as it was modelled, which is kept, so one instance serves all
 * corners of a bank. Where there is no passive fit, its equivalent around the deciding frequency, and a sentence that says so.
 *
 * <p>Safe for use by several threads at once.
 */
public final class FittedBranch implements BranchRealisation {

    /** A closed form is fitted this far below and above the deciding frequency. */
    private static final double SPAN = 1e4;
    /** A coarse fit is made this far below and above it. */
    private static final double COARSE_SPAN = 100;

    private final boolean coarse;
    private final BranchRealisation otherwise = new SeriesEquivalent();
    private final Map<Framed, Attempt> attempts = new ConcurrentHashMap<>();

    /** A model and the decade of the deciding frequency, since a closed form is fitted round that. */
    private record Framed(ImpedanceModel model, int decade) {

        static Framed of(ImpedanceModel model, double aroundHz) {
            return new Framed(model, (int) Math.round(Math.log10(aroundHz)));
        }

        double hz() {
            return Math.pow(10, decade);
        }
    }

    /** @param fit null where there is none, for the reason {@code why} */
    private record Attempt(RationalFit fit, String why) {
    }

    public FittedBranch() {
        this(false);
    }

    private FittedBranch(boolean coarse) {
        this.coarse = coarse;
    }

    /** With few poles, right round the deciding frequency only: to find which of many conditions matter, not for a figure. */
    public static FittedBranch coarse() {
        return new FittedBranch(true);
    }

    @Override
    public RealisedBranch realise(Branch branch, double aroundHz) {
        AddedInSeries added = AddedInSeries.to(branch.part());
        if (added.base() instanceof SeriesRlc part) {
            SeriesRlc bent = bent(part, added);
            if (bent != null) {
                return otherwise.realise(new Branch(branch.label(), branch.count(), bent, branch.mounting(), branch.shared()), aroundHz);
            }
        }
        Framed base = Framed.of(added.base(), aroundHz);
        Attempt attempt = attempt(base);
        RationalFit fit = attempt.fit == null || added.nothing() ? attempt.fit : attempt.fit.inSeriesWith(added.addedOhm(), added.addedPerF());
        if (!added.nothing() && (fit == null || !fit.passive())) {
            base = Framed.of(branch.part(), aroundHz);
            attempt = attempt(base);
            fit = attempt.fit;
        }
        if (fit == null) {
            return instead(branch, aroundHz, attempt.why);
        }
        if (!fit.passive()) {
            return instead(branch, aroundHz, String.join(" ", fit.remarks()));
        }
        double seriesOhm = branch.mounting().resistanceOhm() / branch.count() + branch.shared().resistanceOhm();
        double seriesH = branch.mounting().inductanceH() / branch.count() + branch.shared().inductanceH();
        StateSpace z = fit.stateSpace().inBranch(branch.count(), seriesOhm, seriesH);
        AdmittanceStateSpace space = AdmittanceStateSpace.ofImpedance(z.a(), z.b(), z.c(), z.d(), z.e());
        return coarse ? new RealisedBranch(space, null, null, false) : new RealisedBranch(space,
                errorPercent(branch, fit, ModelFit.pointsOf(branch.part(), base.hz() / SPAN, base.hz() * SPAN)), null, false);
    }

    /** Null where so little is left that no series R-L-C has it. */
    private static SeriesRlc bent(SeriesRlc part, AddedInSeries added) {
        double perF = 1 / part.capacitanceF() + added.addedPerF();
        double ohm = part.resistanceOhm() + added.addedOhm();
        return perF > 0 && ohm >= 0 ? new SeriesRlc(1 / perF, ohm, part.inductanceH()) : null;
    }

    /** Once for each model, however many threads ask for it at the same time. */
    private Attempt attempt(Framed framed) {
        return attempts.computeIfAbsent(framed, this::fit);
    }

    private Attempt fit(Framed framed) {
        try {
            if (coarse) {
                return new Attempt(ModelFit.coarse(framed.model, framed.hz() / COARSE_SPAN, framed.hz() * COARSE_SPAN), null);
            }
            return new Attempt(ModelFit.of(framed.model, framed.hz() / SPAN, framed.hz() * SPAN), null);
        } catch (FitDidNotConvergeException | IllegalArgumentException none) {
            return new Attempt(null, none.getMessage());
        }
    }

    private RealisedBranch instead(Branch branch, double aroundHz, String why) {
        RealisedBranch equivalent = otherwise.realise(branch, aroundHz);
        return new RealisedBranch(equivalent.space(), equivalent.errorPercent(),
                String.format(Locale.ROOT, "%s. Branch '%s' has no passive fit: %s", equivalent.warning(), branch.label(), why), true);
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
