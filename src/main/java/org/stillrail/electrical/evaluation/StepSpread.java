package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.spread.DrawnFigure;
import org.stillrail.electrical.spread.FurtherFigures;
import org.stillrail.electrical.spread.RandomFigure;
import org.stillrail.electrical.spread.RandomLimit;
import org.stillrail.electrical.spread.Strays;

/**
 * What the load step and its way back do to random banks, by the road of the verdict: each bank is a corner of its own and goes through the fits of its branches, with
 * its own crossover and the compensator as it is. What strayed stands in series with the fit of the part as it was modelled, so each part is fitted once for all banks.
 */
final class StepSpread implements FurtherFigures {

    private static final List<DrawnFigure> FIGURES = List.of(DrawnFigure.ofBank(RandomFigure.UNDERSHOOT), DrawnFigure.ofBank(RandomFigure.OVERSHOOT),
            DrawnFigure.ofBank(RandomFigure.DEVIATION));

    private final RailFigures rail;
    private final Fitting fitting;
    private final Corner surroundings;
    private final Tried<Compensation> compensation;
    private final Fits fits = Fits.none();
    private final Verdict nominal;

    /** @param compensation null where the rail's converter has no loop that is modelled */
    StepSpread(EvaluationInput input, Corner surroundings, Tried<Compensation> compensation) {
        this.rail = input.rail();
        this.fitting = Fitting.named(input);
        this.surroundings = surroundings;
        this.compensation = compensation;
        this.nominal = new DeviationJudge(rail).at(figures(surroundings, loop(surroundings), steps(surroundings)));
    }

    /** Null where there is none, or no step to answer. */
    private Tried<LoopBand> loop(Corner corner) {
        return compensation == null || rail.loadStep() == null ? null
                : compensation.then(placed -> LoopBand.crossing(corner.bank(), placed.at(corner, rail)));
    }

    /** Null likewise; refused where the loop is not stable. */
    private Tried<StepPair> steps(Corner corner) {
        Tried<LoopBand> loop = loop(corner);
        if (loop == null) {
            return null;
        }
        Tried<Tried<StepPair>> walked = loop.then(
                band -> figures(corner, loop, null).withFittedSteps(rail, compensation.value(), fits.proper(), false).steps());
        return walked.answered() ? walked.value() : Tried.refused(walked.refusal());
    }

    private static CornerFigures figures(Corner corner, Tried<LoopBand> loop, Tried<StepPair> steps) {
        return new CornerFigures(corner, corner.bank(), null, List.of(), loop, steps, null, null, null, null);
    }

    private boolean answered() {
        return nominal.outcome() == Outcome.MET || nominal.outcome() == Outcome.NOT_MET;
    }

    /** None where the step of the bank with nothing astray is not known. */
    @Override
    public List<DrawnFigure> figures() {
        return answered() ? FIGURES : List.of();
    }

    List<LimitSpread> limits() {
        return !answered() ? List.of() : List.of(new LimitSpread("Deviation",
                new RandomLimit(RandomFigure.DEVIATION, Bound.AT_MOST, nominal.limit()), null, null));
    }

    /** Why there is no step, in a sentence. */
    List<String> unknown() {
        return answered() ? List.of() : List.of(nominal.sentence());
    }

    @Override
    public double[] of(Strays strays, double rippleV) {
        if (!answered()) {
            return new double[0];
        }
        Tried<StepPair> steps = steps(surroundings.straying(strays, fitting));
        if (!steps.answered()) {
            return new double[] {Double.NaN, Double.NaN, Double.NaN};
        }
        double undershootV = steps.value().undershootV();
        double overshootV = steps.value().overshootV();
        return new double[] {undershootV, overshootV, Math.max(undershootV, overshootV)};
    }
}
