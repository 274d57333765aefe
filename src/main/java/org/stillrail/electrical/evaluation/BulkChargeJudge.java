package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Span;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;

/** The bank's capacitance at the lower end of the damping band against {@link ChargeNeed}. */
final class BulkChargeJudge implements Judge {

    private final RailFigures rail;
    private final VerdictForm form;

    BulkChargeJudge(RailFigures rail) {
        this.rail = rail;
        this.form = new VerdictForm(Requirement.BULK_CHARGE, Bound.AT_LEAST, "F", rail.loadStep() == null ? null : rail.loadStep().citation(),
                List.of(ExplainingSeries.BANK_IMPEDANCE, ExplainingSeries.BANK_ALONE));
    }

    @Override
    public Verdict at(CornerFigures figures) {
        if (rail.loadStep() == null) {
            return form.notAsked("The rail states no load step.");
        }
        if (rail.converter().topology() != Topology.BUCK) {
            return form.notModelled("The load step of a " + rail.converter().topology().label() + " converter is not modelled.");
        }
        String corner = figures.corner().name();
        if (!figures.need().answered()) {
            return form.unknown(null, corner, figures.need().refusal());
        }
        ChargeNeed need = figures.need().value();
        if (need.chargeC() == 0) {
            return form.metAnyway(corner, "The load moves no faster than the inductor's current can, so no charge is missing.");
        }
        Bank bank = figures.bank();
        double hz = figures.crossoverHz(rail) / LoopBand.SPREAD;
        double present = ChargeNeed.capacitanceF(bank, hz);
        int largest = largest(bank, hz);
        String name = Carrier.name(bank, largest);
        String when = need.loading() ? "loading" : "release";
        String sentence = "The bank holds " + Words.beside(present, need.capacitanceF(), "F") + " at " + Words.quantity(hz, "Hz") + ", "
                + Words.quantity(need.capacitanceF(), "F") + " needed on " + when + "," + Corner.at(corner) + "; " + name + " holds most of it.";
        Explanation explanation = new Explanation(
                "On " + when + " the inductor is late by " + Words.quantity(need.chargeC(), "C") + ", which the bank covers within "
                        + Words.quantity(rail.loadStep().allowedDeviationV(), "V") + ".",
                name + " holds " + Words.percent(ChargeNeed.capacitanceF(bank.branches().get(largest), hz) / present) + " of the capacitance.",
                "More capacitance, or less inductance in the converter, covers it.");
        return form.judged(need.capacitanceF(), present, corner, largest, sentence, explanation, new Span(hz / 10, hz));
    }

    private static int largest(Bank bank, double hz) {
        int largest = 0;
        double most = -1;
        for (int k = 0; k < bank.branches().size(); k++) {
            double c = ChargeNeed.capacitanceF(bank.branches().get(k), hz);
            if (c > most) {
                most = c;
                largest = k;
            }
        }
        return largest;
    }
}
