package org.stillrail.electrical.evaluation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;

/** Set-point accuracy, regulation, half the ripple and the step against the window, above and below. */
final class WindowJudge implements Judge {

    private final RailFigures rail;
    private final VerdictForm form;

    WindowJudge(RailFigures rail) {
        this.rail = rail;
        this.form = new VerdictForm(Requirement.WINDOW, Bound.AT_MOST, "V", rail.window() == null ? null : rail.window().citation(),
                List.of(ExplainingSeries.VOLTAGE_RULER, ExplainingSeries.RIPPLE, ExplainingSeries.STEP, ExplainingSeries.RELEASE));
    }

    @Override
    public Verdict at(CornerFigures figures) {
        if (rail.window() == null) {
            return form.notAsked();
        }
        if (rail.loadStep() != null && rail.converter().topology() != Topology.BUCK) {
            return form.notModelled("The load step of a " + rail.converter().topology().label() + " converter is not modelled.");
        }
        if (figures.ripplePeakToPeakV() == null) {
            return form.notModelled("The ripple is not modelled: " + Words.WITHOUT_TURNS + ".");
        }
        double narrower = Math.min(rail.window().plusV(), rail.window().minusV());
        String corner = figures.corner().name();
        Tried<WindowShares> shares = shares(rail, figures);
        if (!shares.answered()) {
            return form.unknown(narrower, corner, shares.refusal());
        }
        WindowSide side = shares.value().worse();
        boolean above = side == shares.value().plus();
        Carrier carrier = Carrier.at(figures.bank(), figures.crossoverHz(rail));
        String where = above ? "above" : "below";
        String largest = largest(side, above);
        String sentence = "Accuracy, regulation, half the ripple and the step together take " + Words.beside(side.totalV(), side.allowedV(), "V") + " of the "
                + Words.quantity(side.allowedV(), "V") + " allowed " + where + " nominal," + Corner.at(corner) + "; the largest share is "
                + largest + ".";
        Explanation explanation = new Explanation(
                side.leftV() < 0 ? "The shares exceed the window " + where + " nominal by " + Words.quantity(-side.leftV(), "V") + "."
                        : "Of the window " + where + " nominal " + Words.quantity(side.leftV(), "V") + " is left.",
                "The bank's own share, ripple and step, is " + Words.quantity(side.halfRippleV() + side.stepV(), "V") + "; "
                        + carrier.name() + " carries most of the current round the crossover.",
                "A smaller share of any kind helps: " + largest + " first.");
        return form.judged(side.allowedV(), side.totalV(), corner, carrier.index(), sentence, explanation, null);
    }

    /** Refused where the step or the ripple is asked for but not known. */
    static Tried<WindowShares> shares(RailFigures rail, CornerFigures figures) {
        if (figures.ripplePeakToPeakV() == null) {
            return Tried.refused("The ripple is not modelled: " + Words.WITHOUT_TURNS);
        }
        if (!figures.ripplePeakToPeakV().answered()) {
            return Tried.refused(figures.ripplePeakToPeakV().refusal());
        }
        double ripple = figures.ripplePeakToPeakV().value();
        String corner = figures.corner().name();
        if (rail.loadStep() == null) {
            return Tried.answer(WindowShares.of(corner, rail.window(), ripple, 0, 0));
        }
        if (figures.steps() == null) {
            return Tried.refused("The converter's control is not stated, so the share of the load step is not known");
        }
        return figures.steps().then(steps -> WindowShares.of(corner, rail.window(), ripple,
                steps.aboveNominalV(rail.loadStep()), steps.belowNominalV(rail.loadStep())));
    }

    /** Whether the worse side is the one below nominal; null where that is not known. */
    static Boolean below(RailFigures rail, CornerFigures figures) {
        WindowShares shares = shares(rail, figures).value();
        return shares == null ? null : (Boolean) (shares.worse() == shares.minus());
    }

    private static String largest(WindowSide side, boolean above) {
        Map<String, Double> shares = new LinkedHashMap<>();
        shares.put("the " + (above ? "overshoot" : "undershoot"), side.stepV());
        shares.put("half the ripple", side.halfRippleV());
        shares.put("the set-point accuracy", side.setPointV());
        shares.put("the regulation", side.regulationV());
        return shares.entrySet().stream().max(Map.Entry.comparingByValue())
                .map(share -> share.getKey() + ", " + Words.quantity(share.getValue(), "V")).orElseThrow();
    }
}
