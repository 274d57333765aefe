package org.stillrail.electrical.evaluation;

import java.util.Comparator;
import java.util.List;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Span;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;

/** |Z| at each harmonic against the mask of {@link QuietHarmonic}. */
final class QuietBandJudge implements Judge {

    private final RailFigures rail;
    private final VerdictForm form;

    QuietBandJudge(RailFigures rail) {
        this.rail = rail;
        this.form = new VerdictForm(Requirement.QUIET_BAND, Bound.AT_MOST, "Ω", rail.ripple() == null ? null : rail.ripple().citation(),
                List.of(ExplainingSeries.BANK_IMPEDANCE, ExplainingSeries.QUIET_LIMIT));
    }

    @Override
    public Verdict at(CornerFigures figures) {
        if (rail.ripple() == null) {
            return form.notAsked("The rail sets no ripple limit, which the quiet band is derived from.");
        }
        String corner = figures.corner().name();
        if (figures.ripplePeakToPeakV() == null) {
            return form.notModelled("The converter's current is not modelled: " + Words.WITHOUT_TURNS + ".");
        }
        if (!figures.ripplePeakToPeakV().answered()) {
            return form.unknown(null, corner, figures.ripplePeakToPeakV().refusal());
        }
        if (figures.quiet().isEmpty()) {
            return form.metAnyway(corner, "The phases cancel every harmonic of the switching frequency up to the tenth" + Corner.at(corner) + ".");
        }
        QuietHarmonic worst = figures.quiet().stream().min(Comparator.comparing(QuietHarmonic::margin)).orElseThrow();
        Carrier carrier = Carrier.ofConverter(figures.bank(), worst.frequencyHz());
        String at = Words.quantity(worst.frequencyHz(), "Hz") + ", harmonic " + worst.order();
        String sentence = (figures.bank().distance() == null ? "|Z| is " : "|Z| from the converter to the load is ") + Words.beside(worst.impedanceOhm(), worst.limitOhm(), "Ω") + " at " + at + ", " + Words.quantity(worst.limitOhm(), "Ω")
                + " allowed," + Corner.at(corner) + "; " + carrier.name() + " carries most of it.";
        Explanation explanation = new Explanation(
                "The converter's current of " + Words.quantity(worst.currentA(), "A") + " at harmonic " + worst.order()
                        + " meets the bank where it has the least to spare.",
                carrier.name() + " carries " + Words.percent(carrier.share()) + " of the current there.",
                figures.bank().seenByConverter().at(worst.frequencyHz()).reactanceOhm() > 0
                        ? "Less inductance there helps: shorter mounting, or more small parts side by side."
                        : "More capacitance with low ESR helps there.");
        double hz = rail.converter().switchingHz();
        return form.judged(worst.limitOhm(), worst.impedanceOhm(), corner, carrier.index(), sentence, explanation,
                new Span(hz, QuietHarmonic.ORDERS * hz));
    }
}
