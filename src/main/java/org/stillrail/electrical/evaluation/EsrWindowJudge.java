package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.EsrWindow;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Span;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;

/** Re Z of the bank, as the converter sees it, at the crossover against both bounds; the nearer one gives the numbers. */
final class EsrWindowJudge implements Judge {

    private final RailFigures rail;

    EsrWindowJudge(RailFigures rail) {
        this.rail = rail;
    }

    @Override
    public Verdict at(CornerFigures figures) {
        EsrWindow window = rail.esrWindow();
        boolean least = window != null && window.minimumOhm() != null && window.minimumOhm() > 0;
        boolean most = window != null && window.maximumOhm() != null;
        if (!least && !most) {
            return form(Bound.AT_MOST).notAsked();
        }
        KeyFrequencies frequencies = figures.frequencies(rail);
        double hz = frequencies.crossoverHz();
        double ohm = figures.bank().seenByConverter().at(hz).resistanceOhm();
        boolean low = least && (!most || (ohm - window.minimumOhm()) / window.minimumOhm() < (window.maximumOhm() - ohm) / window.maximumOhm());
        Carrier carrier = Carrier.ofConverter(figures.bank(), hz);
        String corner = figures.corner().name();
        double limit = low ? window.minimumOhm() : window.maximumOhm();
        String sentence = "ESR of the bank at the crossover of " + Words.quantity(hz, "Hz") + " is " + Words.beside(ohm, limit, "Ω") + ", at "
                + (low ? "least " : "most ") + Words.quantity(limit, "Ω") + " asked," + Corner.at(corner) + "; " + carrier.name()
                + " carries most of the current.";
        Explanation explanation = new Explanation(
                frequencies.crossoverGiven() ? "The rail sets a window for Re Z at the loop's crossover."
                        : "No crossover is known; a tenth of the switching frequency stands in for it.",
                carrier.name() + " carries " + Words.percent(carrier.share()) + " of the current there.",
                low ? "More ESR in the branch that carries the current, or fewer low-ESR parts beside it, raises it."
                        : "Less ESR in the branch that carries the current, or more parts side by side, lowers it.");
        return form(low ? Bound.AT_LEAST : Bound.AT_MOST).judged(limit, ohm, corner, carrier.index(), sentence, explanation, new Span(hz, hz));
    }

    private VerdictForm form(Bound bound) {
        return new VerdictForm(Requirement.ESR_WINDOW, bound, "Ω", rail.esrWindow() == null ? null : rail.esrWindow().citation(),
                List.of(ExplainingSeries.BANK_ESR));
    }
}
