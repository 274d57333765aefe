package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.CarrierRibbon;
import org.stillrail.electrical.bank.RingSide;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.QuietHarmonic;

/** The carrier ribbon as the browser's module reads it. @param where behind its title, null at one node */
record RibbonData(String summary, double from, double to, List<Span> spans, List<Gap> gaps, List<Knot> knots, List<Bracket> brackets,
        String where) {

    private static final double HALF_A_HARMONIC = 0.5;

    record Span(double from, double to, String branch, String label, String technology) {
    }

    record Gap(double from, double to, String label) {
    }

    record Knot(double at, String a, String b, String labelA, String labelB, double q) {
    }

    record Bracket(String label, double from, double to) {
    }

    static RibbonData of(Evaluation evaluation) {
        FrequencyGrid grid = evaluation.curves().bank().grid();
        List<BranchInput> branches = evaluation.input().branches();
        List<Span> spans = new ArrayList<>();
        for (CarrierRibbon.Span span : evaluation.ribbon().spans()) {
            BranchInput branch = branches.get(span.branch());
            spans.add(new Span(span.fromHz(), span.toHz(), BankCharts.key(span.branch()), branch.label(),
                    branch.technology() == null ? null : branch.technology().key()));
        }
        Bank bank = evaluation.shown().bank();
        List<Knot> knots = evaluation.ribbon().rings().stream().map(ring -> new Knot(ring.frequencyHz(),
                key(ring.inductive()), key(ring.capacitive()), ring.inductive().label(bank), ring.capacitive().label(bank),
                ring.qualityFactor())).toList();
        List<Bracket> brackets = evaluation.brackets().stream()
                .map(bracket -> new Bracket(bracket.task().label(), bracket.fromHz(), bracket.toHz())).toList();
        boolean two = evaluation.input().distance() != null;
        return new RibbonData("Which branch carries most of the current " + (two ? "that the load draws " : "") + "at each frequency", grid.startHz(), grid.stopHz(), spans,
                gaps(evaluation.quiet()), knots, brackets, two ? "drawn at the load" : null);
    }

    /** Of a series of the charts; the load's capacitance has none, and no colour of its own. */
    private static String key(RingSide side) {
        return side.isLoad() ? null : BankCharts.key(side.branch());
    }

    /** Broken open round every harmonic where |Z| exceeds its limit; neighbours run together. */
    private static List<Gap> gaps(List<QuietHarmonic> harmonics) {
        List<Gap> gaps = new ArrayList<>();
        for (QuietHarmonic harmonic : harmonics) {
            if (harmonic.impedanceOhm() <= harmonic.limitOhm()) {
                continue;
            }
            double fundamental = harmonic.frequencyHz() / harmonic.order();
            double from = Math.max(fundamental, harmonic.frequencyHz() - HALF_A_HARMONIC * fundamental);
            double to = harmonic.frequencyHz() + HALF_A_HARMONIC * fundamental;
            Gap last = gaps.isEmpty() ? null : gaps.get(gaps.size() - 1);
            if (last != null && last.to() >= from) {
                gaps.set(gaps.size() - 1, new Gap(last.from(), to, last.label()));
            } else {
                gaps.add(new Gap(from, to, "|Z| over its limit"));
            }
        }
        return gaps;
    }

    String json() {
        return CanonicalJson.write(this);
    }
}
