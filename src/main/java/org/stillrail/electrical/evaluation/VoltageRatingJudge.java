package org.stillrail.electrical.evaluation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.requirement.DeratingRule;
import org.stillrail.electrical.requirement.DeratingRules;
import org.stillrail.electrical.requirement.ExplainingSeries;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.electrical.requirement.Verdict.Explanation;
import org.stillrail.electrical.stress.PartStress;

/**
 * The highest voltage by the accuracy of the reference and half the ripple, against the team's derating rule of each branch's technology, at the
 * highest ambient temperature, or that of its core where this is warmer at the corner; the worst branch is named.
 */
final class VoltageRatingJudge implements BranchJudge {

    private static final double ROOM_C = 25;

    private final RailFigures rail;
    private final List<BranchInput> branches;
    private final DeratingRules rules;
    private final VerdictForm form;
    private final VerdictForm leastRating;

    VoltageRatingJudge(EvaluationInput input) {
        this.rail = input.rail();
        this.branches = input.branches();
        this.rules = input.settings().deratingRules();
        List<ExplainingSeries> series = List.of(ExplainingSeries.STRESS_TABLE);
        this.form = new VerdictForm(Requirement.VOLTAGE_RATING, Bound.AT_MOST, "V", null, series);
        this.leastRating = new VerdictForm(Requirement.VOLTAGE_RATING, Bound.AT_LEAST, "V", null, series);
    }

    /** By which the output may be off its nominal voltage; 0 where the rail states no window. */
    static double accuracyV(RailFigures rail) {
        return rail.window() == null ? 0 : rail.window().setPointAccuracyV();
    }

    @Override
    public int branches() {
        return branches.size();
    }

    @Override
    public Verdict at(CornerFigures figures, int index) {
        String corner = figures.corner().name();
        boolean rippleKnown = figures.ripplePeakToPeakV() != null && figures.ripplePeakToPeakV().answered();
        double voltage = rail.nominalVoltageV() + accuracyV(rail) + (rippleKnown ? ripplePeakToPeakV(figures, branches.get(index)) / 2 : 0);
        Verdict verdict = of(index, voltage, temperatureC(figures, index), corner);
        if (verdict.outcome() != Outcome.MET || rippleKnown) {
            return verdict;
        }
        return figures.ripplePeakToPeakV() == null
                ? form.unknown(verdict.limit(), corner, "The peak voltage is not known, since " + Words.WITHOUT_TURNS)
                : form.unknown(verdict.limit(), corner, figures.ripplePeakToPeakV().refusal());
    }

    /** At the branch's own node. */
    static double ripplePeakToPeakV(CornerFigures figures, BranchInput branch) {
        return figures.rippleAtConverterV() == null || branch.node() == Node.LOAD
                ? figures.ripplePeakToPeakV().value() : figures.rippleAtConverterV();
    }

    private double temperatureC(CornerFigures figures, int index) {
        double ambientC = rail.ambient() == null ? ROOM_C : rail.ambient().maximumC();
        PartStress stress = figures.stressOf(index);
        return stress == null || stress.heat() == null || stress.heat().runsAway() ? ambientC : Math.max(ambientC, stress.heat().coreC());
    }

    private Verdict of(int index, double voltage, double temperatureC, String corner) {
        BranchInput branch = branches.get(index);
        String name = "'" + branch.label() + "'";
        if (branch.ratedVoltageV() == null) {
            return form.unknown(null, corner, name + " has no rated voltage");
        }
        if (branch.technology() == null) {
            return form.unknown(null, corner, name + " has no technology, so no derating rule applies to it");
        }
        Optional<DeratingRule> found = rules.of(branch.technology());
        if (found.isEmpty()) {
            return form.unknown(null, corner, "The team has no derating rule for " + branch.technology().label() + ", which " + name + " is");
        }
        DeratingRule rule = found.get();
        if (rule.belowVoltageV() != null && rail.nominalVoltageV() < rule.belowVoltageV()
                && branch.ratedVoltageV() < rule.leastRatedVoltageV()) {
            return tooSmallForLowVoltage(index, name, rule, branch.ratedVoltageV(), corner);
        }
        String at = Words.celsius(temperatureC) + (rail.ambient() == null ? " (no ambient is stated)" : "");
        OptionalDouble share = rule.shareAt(temperatureC);
        Explanation explanation = new Explanation(
                "The rail's voltage, the accuracy of its reference and the peak of its ripple stand across every part.",
                name + " is " + branch.technology().label() + " rated for " + Words.quantity(branch.ratedVoltageV(), "V") + ".",
                "A part rated for more, or another technology. The rule's source: " + rule.source() + ".");
        if (share.isEmpty()) {
            return form.notMet(0.0, corner, index, "The derating rule for " + branch.technology().label() + " allows nothing at " + at + "; " + name
                    + " must stay cooler.", explanation, null);
        }
        double limit = share.getAsDouble() * branch.ratedVoltageV();
        String sentence = name + " carries " + Words.beside(voltage, limit, "V") + " with the peak of the ripple, " + Words.quantity(limit, "V")
                + " allowed, which is " + Words.percent(share.getAsDouble()) + " of its rating at " + at + ".";
        return form.judged(limit, voltage, corner, index, sentence, explanation, null);
    }

    private Verdict tooSmallForLowVoltage(int index, String name, DeratingRule rule, double ratedV, String corner) {
        String sentence = name + " is rated for " + Words.quantity(ratedV, "V") + "; below " + Words.quantity(rule.belowVoltageV(), "V")
                + " the rule asks for " + Words.quantity(rule.leastRatedVoltageV(), "V") + " at least.";
        return leastRating.judged(rule.leastRatedVoltageV(), ratedV, corner, index, sentence, new Explanation(
                "The team's rule for low voltages asks for a higher rating.", name + " falls under it.",
                "A part rated for more. The rule's source: " + rule.source() + "."), null);
    }
}
