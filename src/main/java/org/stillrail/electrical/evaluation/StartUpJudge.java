package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.stress.StartUp;

/** Charging current, load and half the inductors' ripple on the rail's ramp, against the converter's current limit. */
final class StartUpJudge implements Judge {

    private final EvaluationInput input;
    private final RailFigures rail;
    private final VerdictForm form;

    StartUpJudge(EvaluationInput input) {
        this.input = input;
        this.rail = input.rail();
        this.form = new VerdictForm(Requirement.START_UP, Bound.AT_MOST, "A", rail.startUp() == null ? null : rail.startUp().citation(),
                List.of(ExplainingSeries.STRESS_TABLE));
    }

    @Override
    public Verdict at(CornerFigures figures) {
        if (rail.startUp() == null) {
            return form.notAsked();
        }
        if (rail.converter().topology() != Topology.BUCK) {
            return form.notModelled("The start-up of a " + rail.converter().topology().label()
                    + " converter is not modelled: its current limit is not one on the output.");
        }
        String corner = figures.corner().name();
        Double limit = rail.converter().currentLimitA();
        if (limit == null) {
            return form.unknown(null, corner, "The converter's current limit is not stated");
        }
        Tried<StartUp> tried = Tried.of(() -> of(input, figures.corner()));
        return tried.answered() ? judged(tried.value(), limit, figures.corner()) : form.unknown(limit, corner, tried.refusal());
    }

    /** @throws IllegalArgumentException where a buck cannot make the output from this input */
    static StartUp of(EvaluationInput input, Corner corner) {
        RailFigures rail = input.rail();
        double outputV = corner.conditions().outputV();
        return StartUp.of(BankHolding.of(input, corner, outputV), outputV, rail.startUp().rampS(), rail.converter().currentLimitA(),
                loadA(rail), halfRippleA(rail, corner));
    }

    private static double loadA(RailFigures rail) {
        return rail.startUp().loadA() == null ? rail.nominalCurrentA() : rail.startUp().loadA();
    }

    /** Of all phases together, as if each were limited by its peak. */
    private static double halfRippleA(RailFigures rail, Corner corner) {
        PeriodicCurrent current = corner.current(rail);
        return current == null ? 0 : rail.converter().phases() * current.inductorPeakToPeakA().orElse(0) / 2;
    }

    private Verdict judged(StartUp start, double limit, Corner corner) {
        double ripple = halfRippleA(rail, corner);
        double value = start.peakChargingA() + loadA(rail) + ripple;
        // The ramp charges the largest capacitance of the bank with the largest current.
        double bankF = start.peakChargingA() * rail.startUp().rampS() / corner.conditions().outputV();
        String sentence = "Coming up in " + Words.quantity(rail.startUp().rampS(), "s") + " takes " + Words.beside(value, limit, "A") + ", "
                + Words.quantity(limit, "A") + " allowed," + Corner.at(corner.name()) + ": the bank of " + Words.quantity(bankF, "F") + " is charged with "
                + Words.quantity(start.peakChargingA(), "A") + "; the converter could start into "
                + Words.quantity(start.largestCapacitanceF(), "F") + " on this ramp.";
        return form.judged(limit, value, corner.name(), null, sentence, new Explanation(
                "The ramp charges the bank with its capacitance times the slope, most where the capacitance is largest, at "
                        + Words.quantity(start.peakAtV(), "V") + ".",
                "The load takes " + Words.quantity(loadA(rail), "A") + (rail.startUp().loadA() == null ? " (its nominal current, as no other is stated)" : "")
                        + ", the peak of the inductors' ripple " + Words.quantity(ripple, "A") + ".",
                start.shortestRampS() == null ? "Less load while coming up, or a higher current limit."
                        : "A ramp of " + Words.quantity(start.shortestRampS(), "s") + " or more suits this bank; or less capacitance."), null);
    }
}
