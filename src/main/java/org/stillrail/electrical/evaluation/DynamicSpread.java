package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.spread.DrawnFigure;
import org.stillrail.electrical.spread.RandomFigure;
import org.stillrail.electrical.spread.RandomLimit;
import org.stillrail.electrical.spread.Strays;

/**
 * What loop and load step do to random banks, by the road of the verdicts: each bank is a corner of its own and goes through the fits of its branches, with its own
 * crossover and the compensator as it is. What strayed stands in series with the fit of the part as it was modelled, so each part is fitted once for all banks.
 * Crossover, phase margin and damping are told here of a bank at two nodes only; of one node they need no more than its impedance.
 */
final class DynamicSpread extends JudgedFigures {

    /**
     * A figure that a verdict looks at.
     *
     * @param share of its limit, which goes with the bank; else the value itself
     */
    private record Judged(RandomFigure kind, Judge judge, boolean share) {

        /** Infinite where the verdict is met whatever the figure; not a number where there is none. */
        double of(CornerFigures figures) {
            Verdict verdict = judge.at(figures);
            if (verdict.value() == null) {
                return verdict.met() ? Double.POSITIVE_INFINITY : Double.NaN;
            }
            return share ? verdict.value() / verdict.limit() : verdict.value();
        }
    }

    private final EvaluationInput input;
    private final RailFigures rail;
    private final Fitting fitting;
    private final Corner surroundings;
    private final Tried<Compensation> compensation;
    private final Fits fits = Fits.none();
    private final boolean stepped;
    private final List<Judged> judged = new ArrayList<>();

    /**
     * @param compensation   null where the rail's converter has no loop that is modelled
     * @param nominalRippleV peak to peak where nothing strays, null where it is not known
     */
    DynamicSpread(EvaluationInput input, Corner surroundings, Tried<Compensation> compensation, Double nominalRippleV) {
        this.input = input;
        this.rail = input.rail();
        this.fitting = Fitting.named(input);
        this.surroundings = surroundings;
        this.compensation = compensation;
        CornerFigures nominal = at(surroundings, nominalRippleV);
        Judged deviation = new Judged(RandomFigure.DEVIATION, new DeviationJudge(rail), false);
        Verdict verdict = deviation.judge().at(nominal);
        this.stepped = answered(verdict);
        if (stepped) {
            figures.add(DrawnFigure.ofBank(RandomFigure.UNDERSHOOT));
            figures.add(DrawnFigure.ofBank(RandomFigure.OVERSHOOT));
            add(deviation, verdict);
        } else {
            addUnknown(verdict);
        }
        add(nominal, new Judged(RandomFigure.WINDOW_SHARE, new WindowJudge(rail), true));
        add(nominal, new Judged(RandomFigure.BULK_CHARGE_SHARE, new BulkChargeJudge(rail), true));
        add(nominal, new Judged(RandomFigure.GAIN_MARGIN, LoopMarginJudge.ofGain(input), false));
        add(nominal, new Judged(RandomFigure.START_UP_CURRENT, new StartUpJudge(input), false));
        add(nominal, new Judged(RandomFigure.REVERSE_SHARE, new ReverseVoltageJudge(input), true));
        if (surroundings.bank().distance() != null) {
            add(nominal, new Judged(RandomFigure.PHASE_MARGIN, LoopMarginJudge.ofPhase(input), false));
            add(nominal, new Judged(RandomFigure.SENSITIVITY_PEAK, new DampingJudge(input), false));
        }
    }

    private void add(CornerFigures nominal, Judged figure) {
        Verdict verdict = figure.judge().at(nominal);
        if (answered(verdict)) {
            add(figure, verdict);
        } else if (verdict.outcome() == Outcome.UNKNOWN) {
            addUnknown(verdict);
        }
    }

    private void add(Judged figure, Verdict nominal) {
        judged.add(figure);
        figures.add(DrawnFigure.ofBank(figure.kind()));
        limits.add(new LimitSpread(nominal.requirement().label(),
                new RandomLimit(figure.kind(), nominal.bound(), figure.share() ? 1 : nominal.limit()), null, null));
    }

    private static boolean answered(Verdict verdict) {
        return verdict.value() != null && verdict.limit() != null && (verdict.outcome() == Outcome.MET || verdict.outcome() == Outcome.NOT_MET);
    }

    private CornerFigures at(Corner corner, Double rippleV) {
        Tried<LoopBand> loop = loop(corner);
        Tried<ChargeNeed> need = rail.loadStep() == null ? null : Tried.of(() -> ChargeNeed.of(corner.stage(rail), rail.loadStep()));
        Tried<Double> ripple = rippleV == null ? null : Tried.answer(rippleV);
        Double atConverterV = rippleV == null ? null : StressSpread.rippleAtConverterV(input, corner);
        CornerFigures still = new CornerFigures(corner, corner.bank(), ripple, List.of(), loop, null, need, atConverterV, null, null);
        if (loop == null || rail.loadStep() == null) {
            return still;
        }
        Tried<CornerFigures> stepped = loop.then(band -> still.withFittedSteps(rail, compensation.value(), fits.proper(), false));
        return stepped.answered() ? stepped.value()
                : new CornerFigures(corner, corner.bank(), ripple, List.of(), loop, Tried.refused(stepped.refusal()), need, atConverterV, null, null);
    }

    /** Null where there is none. */
    private Tried<LoopBand> loop(Corner corner) {
        return compensation == null ? null : compensation.then(placed -> corner.bank().distance() == null
                ? LoopBand.crossing(corner.bank(), placed.at(corner, rail)) : LoopBand.of(corner.bank(), placed.at(corner, rail), placed.wantedHz()));
    }

    @Override
    public double[] of(Strays strays, double rippleV) {
        if (figures.isEmpty()) {
            return new double[0];
        }
        CornerFigures drawn = at(surroundings.straying(strays, fitting), Double.isNaN(rippleV) ? null : (Double) rippleV);
        double[] values = new double[figures.size()];
        int next = 0;
        if (stepped) {
            StepPair steps = drawn.steps().value();
            values[next++] = steps == null ? Double.NaN : steps.undershootV();
            values[next++] = steps == null ? Double.NaN : steps.overshootV();
        }
        for (Judged figure : judged) {
            values[next++] = figure.of(drawn);
        }
        return values;
    }
}
