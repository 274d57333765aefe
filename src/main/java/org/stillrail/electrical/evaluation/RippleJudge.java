package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Span;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;

/** Peak to peak of the exact waveform against the limit. */
final class RippleJudge implements Judge {

    private final RailFigures rail;
    private final VerdictForm form;

    RippleJudge(RailFigures rail) {
        this.rail = rail;
        this.form = new VerdictForm(Requirement.RIPPLE, Bound.AT_MOST, "V", rail.ripple() == null ? null : rail.ripple().citation(),
                List.of(ExplainingSeries.RIPPLE, ExplainingSeries.BANK_IMPEDANCE, ExplainingSeries.VOLTAGE_RULER));
    }

    @Override
    public Verdict at(CornerFigures figures) {
        if (rail.ripple() == null) {
            return form.notAsked();
        }
        double limit = rail.ripple().peakToPeakV();
        String corner = figures.corner().name();
        if (figures.ripplePeakToPeakV() == null) {
            return form.notModelled("The ripple is not modelled: " + Words.WITHOUT_TURNS + ".");
        }
        if (!figures.ripplePeakToPeakV().answered()) {
            return form.unknown(limit, corner, figures.ripplePeakToPeakV().refusal());
        }
        double value = figures.ripplePeakToPeakV().value();
        double hz = rail.converter().switchingHz();
        Carrier carrier = Carrier.ofConverter(figures.bank(), hz);
        ImpedancePoint z = figures.bank().seenByConverter().at(hz);
        String ripple = Words.beside(value, limit, "V");
        String sentence = (figures.rippleAtConverterV() == null ? "Ripple is " : "Ripple at the load is ") + ripple + " peak to peak"
                + atConverter(figures) + ", " + Words.quantity(limit, "V") + " allowed," + Corner.at(corner) + "; "
                + carrier.name() + " carries most of the switching current.";
        return form.judged(limit, value, corner, carrier.index(), sentence, switch (rail.converter().topology()) {
            case BUCK -> explanation(z, carrier, across(figures, ripple), hz);
            case DRAWN -> ofPulses("The current that the rail draws", carrier, across(figures, ripple));
            case BOOST, INVERTING_BUCK_BOOST, FLYBACK -> ofPulses("The rectifier's current, which starts and stops in "
                    + Words.quantity(rail.converter().edgeOrUsualS(), "s") + ",", carrier, across(figures, ripple));
        }, new Span(hz, QuietHarmonic.ORDERS * hz));
    }

    private static String atConverter(CornerFigures figures) {
        return figures.rippleAtConverterV() == null ? ""
                : " (" + Words.quantity(figures.rippleAtConverterV(), "V") + " at the converter's node)";
    }

    /** What the converter's current makes where it enters. */
    private static String across(CornerFigures figures, String ripple) {
        return figures.rippleAtConverterV() == null ? ripple + " across the bank"
                : Words.quantity(figures.rippleAtConverterV(), "V") + " at the converter's node and " + ripple + " at the load, across the bank";
    }

    /** Such a current starts and stops at once, so harmonics far above the first make much of the ripple, and Z at the first tells little. */
    private static Explanation ofPulses(String current, Carrier carrier, String across) {
        return new Explanation(
                current + " makes " + across + ".",
                carrier.name() + " carries " + Words.percent(carrier.share()) + " of the current at the switching frequency.",
                "Less ESL, by shorter mounting or more parts side by side, lowers the spikes at the edges; less ESR and more capacitance lower the rest.");
    }

    private static Explanation explanation(ImpedancePoint z, Carrier carrier, String across, double hz) {
        boolean resistive = z.resistanceOhm() > Math.abs(z.reactanceOhm());
        String kind = resistive ? "resistance" : z.reactanceOhm() < 0 ? "capacitance" : "inductance";
        String change = resistive ? "Less ESR where the current flows, or more inductance in the converter, lowers it."
                : z.reactanceOhm() < 0 ? "More capacitance, or more inductance in the converter, lowers it."
                : "Shorter mounting or more parts side by side lower it.";
        return new Explanation(
                "The inductor's ripple current makes " + across + ", which at " + Words.quantity(hz, "Hz") + " is "
                        + Words.quantity(Math.sqrt(z.squaredMagnitude()), "Ω") + ", mostly " + kind + ".",
                carrier.name() + " carries " + Words.percent(carrier.share()) + " of the current there.", change);
    }
}
