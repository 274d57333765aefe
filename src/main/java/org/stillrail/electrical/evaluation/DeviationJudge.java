package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Span;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;

/** Undershoot and overshoot on the load step and on its way back, with the loop and its duty limits. */
final class DeviationJudge implements Judge {

    private final RailFigures rail;
    private final VerdictForm form;

    DeviationJudge(RailFigures rail) {
        this.rail = rail;
        this.form = new VerdictForm(Requirement.DEVIATION, Bound.AT_MOST, "V", rail.loadStep() == null ? null : rail.loadStep().citation(),
                List.of(ExplainingSeries.STEP, ExplainingSeries.RELEASE, ExplainingSeries.BANK_ALONE, ExplainingSeries.WORST_LOAD,
                        ExplainingSeries.VOLTAGE_RULER));
    }

    @Override
    public Verdict at(CornerFigures figures) {
        if (rail.loadStep() == null) {
            return form.notAsked("The rail states no load step.");
        }
        if (rail.converter().topology() != Topology.BUCK) {
            return form.notModelled("The load step of a " + rail.converter().topology().label() + " converter is not modelled.");
        }
        if (rail.converter().control() == null) {
            return form.notAsked("The converter's control is not stated, so there is no loop that answers the step.");
        }
        double limit = rail.loadStep().allowedDeviationV();
        String corner = figures.corner().name();
        if (!figures.steps().answered()) {
            return form.unknown(limit, corner, figures.steps().refusal());
        }
        StepPair steps = figures.steps().value();
        boolean under = steps.undershootV() > steps.overshootV();
        double value = Math.max(steps.undershootV(), steps.overshootV());
        double hz = figures.crossoverHz(rail);
        Carrier carrier = Carrier.at(figures.bank(), hz);
        String kind = under ? "undershoot" : "overshoot";
        String where = figures.bank().distance() == null ? "" : " at the load";
        String sentence = "The load step makes an " + kind + " of " + Words.beside(value, limit, "V") + where + ", " + Words.quantity(limit, "V") + " allowed,"
                + Corner.at(corner) + "; " + carrier.name() + " carries most of the current round the crossover." + droop() + how(steps);
        Explanation explanation = new Explanation(
                "The output falls by " + Words.quantity(steps.undershootV(), "V") + " and rises by " + Words.quantity(steps.overshootV(), "V")
                        + " at most, while the loop brings the inductor's current to the load's.",
                carrier.name() + " carries " + Words.percent(carrier.share()) + " of the current at " + Words.quantity(hz, "Hz") + ".",
                "More capacitance, less ESR, or a higher crossover lowers it.");
        return form.judged(limit, value, corner, carrier.index(), sentence, explanation, new Span(hz / LoopBand.SPREAD, hz * LoopBand.SPREAD));
    }

    /** What of it the load line makes. */
    private String droop() {
        double droopV = Math.abs(rail.loadStep().droopV(rail.loadStep().toA() - rail.loadStep().fromA()));
        return droopV == 0 ? "" : " The load line moves the set-point by " + Words.quantity(droopV, "V") + " of it.";
    }

    /** How well the branches are known in time, where that is not exact. */
    private static String how(StepPair steps) {
        List<String> replaced = steps.step().replaced();
        if (!replaced.isEmpty()) {
            return " It rests on an equivalent for '" + String.join("' and '", replaced) + "', of which there is no passive fit.";
        }
        return steps.fitErrorPercent() == null ? "" : " The parts' fits are within " + Words.percent(steps.fitErrorPercent() / 100) + " of |Z|.";
    }
}
