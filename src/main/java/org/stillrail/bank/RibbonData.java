package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.bank.CarrierRibbon;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.KeyFrequencies;

/** The carrier ribbon as the browser's module reads it. */
record RibbonData(String summary, double from, double to, List<Span> spans, List<Span> gaps, List<Knot> knots, List<Bracket> brackets) {

    record Span(double from, double to, String branch, String label, String technology) {
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
        List<Knot> knots = evaluation.ribbon().rings().stream().map(ring -> new Knot(ring.frequencyHz(),
                BankCharts.key(ring.inductiveBranch()), BankCharts.key(ring.capacitiveBranch()),
                branches.get(ring.inductiveBranch()).label(), branches.get(ring.capacitiveBranch()).label(), ring.qualityFactor())).toList();
        KeyFrequencies f = evaluation.frequencies();
        List<Bracket> brackets = List.of(
                new Bracket("holds the charge", grid.startHz(), f.dampingFromHz()),
                new Bracket("calms the loop", f.dampingFromHz(), f.dampingToHz()),
                new Bracket("swallows the switching", f.quietFromHz(), f.quietToHz()));
        return new RibbonData("Which branch carries most of the current at each frequency", grid.startHz(), grid.stopHz(), spans,
                List.of(), knots, brackets);
    }

    String json() {
        return CanonicalJson.write(this);
    }
}
