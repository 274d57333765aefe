package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.LoopMarginLimits;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Span;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;

/** Phase margin or gain margin of the loop against the least that the rail asks. */
final class LoopMarginJudge implements Judge {

    private final EvaluationInput input;
    private final boolean phase;
    private final Double least;
    private final VerdictForm form;

    private LoopMarginJudge(EvaluationInput input, Requirement requirement, String unit, Double least, LoopMarginLimits limits) {
        this.input = input;
        this.phase = requirement == Requirement.PHASE_MARGIN;
        this.least = least;
        this.form = new VerdictForm(requirement, Bound.AT_LEAST, unit, limits == null ? null : limits.citation(),
                List.of(ExplainingSeries.LOOP_GAIN, ExplainingSeries.SENSITIVITY, ExplainingSeries.BANK_ESR));
    }

    static LoopMarginJudge ofPhase(EvaluationInput input) {
        LoopMarginLimits limits = input.rail().margins();
        return new LoopMarginJudge(input, Requirement.PHASE_MARGIN, "deg", limits == null ? null : limits.leastPhaseDeg(), limits);
    }

    static LoopMarginJudge ofGain(EvaluationInput input) {
        LoopMarginLimits limits = input.rail().margins();
        return new LoopMarginJudge(input, Requirement.GAIN_MARGIN, "dB", limits == null ? null : limits.leastGainDb(), limits);
    }

    @Override
    public Verdict at(CornerFigures figures) {
        RailFigures rail = input.rail();
        if (least == null) {
            return form.notAsked();
        }
        if (rail.converter().topology() != Topology.BUCK) {
            return form.notModelled("The loop of a " + rail.converter().topology().label() + " converter is not modelled.");
        }
        if (rail.converter().control() == null) {
            return form.notAsked("The converter's control is not stated, so there is no loop with a margin.");
        }
        String corner = figures.corner().name();
        if (!figures.loop().answered()) {
            return form.unknown(least, corner, figures.loop().refusal());
        }
        LoopBand band = figures.loop().value();
        if (!band.stable()) {
            return unstable(figures, corner);
        }
        if (band.crossoverHz() == null) {
            return form.unknown(least, corner, "The loop gain does not cross 1, so it has no margin that could be read");
        }
        Verdict verdict = phase ? phase(figures, band, corner) : gain(figures, band, corner);
        Integer unbounded = verdict.met() ? DampingJudge.withoutLeastResistance(input.branches(), figures.bank(), band.crossoverHz()) : null;
        return unbounded == null ? verdict : form.unknown(least, corner, "No smallest ESR is known of " + Carrier.name(figures.bank(), unbounded)
                + ", so nobody can say how little phase it may leave");
    }

    private Verdict unstable(CornerFigures figures, String corner) {
        double hz = figures.crossoverHz(input.rail());
        Carrier carrier = Carrier.at(figures.bank(), hz);
        return form.notMet(least, corner, carrier.index(), "The closed loop is unstable" + Corner.at(corner) + ", so it has no margin.",
                new Explanation("The loop gain encircles -1, so the output oscillates.",
                        carrier.name() + " carries most of the current at the crossover.", "A lower crossover, or a bank with more phase there, is needed."),
                around(hz));
    }

    private Verdict phase(CornerFigures figures, LoopBand band, String corner) {
        double hz = band.crossoverHz();
        Carrier carrier = Carrier.at(figures.bank(), hz);
        String sentence = "The phase margin is " + degrees(band.phaseMarginDeg()) + " at the crossover of " + Words.quantity(hz, "Hz") + ", at least "
                + degrees(least) + " asked," + Corner.at(corner) + "; " + carrier.name() + " carries most of the current there.";
        Explanation explanation = new Explanation(
                "The crossover is where |T| passes 1 with the least margin; the bank's ESR there is " + Words.quantity(band.esrAtCrossoverOhm(), "Ω") + ".",
                carrier.name() + " carries " + Words.percent(carrier.share()) + " of the current at the crossover.",
                "A lower crossover, or more ESR round it, leaves more phase.");
        return form.judged(least, band.phaseMarginDeg(), corner, carrier.index(), sentence, explanation, around(hz));
    }

    private Verdict gain(CornerFigures figures, LoopBand band, String corner) {
        double hz = band.crossoverHz();
        if (band.gainMarginDb() == null) {
            return form.metAnyway(corner, "The phase of the loop nowhere passes -180\u00b0 with a gain below 1" + Corner.at(corner) + ", so no gain margin is needed.");
        }
        Carrier carrier = Carrier.at(figures.bank(), hz);
        String sentence = "The gain margin is " + Words.quantity(band.gainMarginDb(), "") + " dB, at least " + Words.quantity(least, "") + " dB asked,"
                + Corner.at(corner) + "; " + carrier.name() + " carries most of the current at the crossover.";
        Explanation explanation = new Explanation("It is the least distance of |T| below 1 where the phase passes -180\u00b0.",
                carrier.name() + " carries " + Words.percent(carrier.share()) + " of the current at the crossover of " + Words.quantity(hz, "Hz") + ".",
                "A lower crossover, or less impedance above it, widens it.");
        return form.judged(least, band.gainMarginDb(), corner, carrier.index(), sentence, explanation, around(hz));
    }

    private static String degrees(double degrees) {
        return Words.quantity(degrees, "") + "\u00b0";
    }

    private static Span around(double hz) {
        return new Span(hz / LoopBand.SPREAD, hz * LoopBand.SPREAD);
    }
}
