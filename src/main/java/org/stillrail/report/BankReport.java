package org.stillrail.report;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.stillrail.bank.Bank;
import org.stillrail.bank.Places;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.QuietHarmonic;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.project.Project;
import org.stillrail.project.Rail;
import org.stillrail.project.RailFacts;
import org.stillrail.review.ReviewRecord;
import org.stillrail.web.Quantity;

/**
 * All that the report of one bank revision prints.
 *
 * @param charts   as SVG
 * @param cautions sentences that a reader outside the tool must see
 */
record BankReport(
        Bank bank, Project project, Rail rail, List<RailFacts.Fact> facts, List<PartLine> parts, Evaluation evaluation, List<VerdictLine> verdicts,
        List<String> charts, List<EvidenceLine> evidence, ReviewRecord review, List<String> cautions, OffsetDateTime printedAt, String printedBy) {

    /** A verdict in the report's words. */
    record VerdictLine(
            String name, String outcome, String limit, String value, String margin, String corner, String sentence, String source) {

        static VerdictLine of(Verdict verdict) {
            return new VerdictLine(verdict.requirement().label(), verdict.outcome().label(), show(verdict.limit(), verdict.unit()),
                    show(verdict.value(), verdict.unit()), verdict.margin() == null ? "\u2013" : Quantity.format(100 * verdict.margin(), "%", 3),
                    verdict.corner() == null ? "\u2013" : verdict.corner(), verdict.sentence(),
                    verdict.citation() == null ? "" : verdict.citation().toString());
        }
    }

    /** Where the branches stand and how they are mounted. */
    public List<String> places() {
        return Places.sentences(evaluation.input());
    }

    static List<VerdictLine> verdicts(Evaluation evaluation) {
        return evaluation.verdicts().stream().filter(verdict -> verdict.outcome() != Outcome.NOT_ASKED).map(VerdictLine::of).toList();
    }

    static List<String> charts(Evaluation evaluation) {
        List<String> charts = new ArrayList<>();
        String where = evaluation.input().distance() == null ? "" : ", at the load";
        charts.add(ReportChart.logLog("Magnitude of the impedance" + where, "Frequency (Hz)", "|Z| (\u03a9)", withQuietLimit(evaluation)));
        charts.add(ReportChart.logLog("Equivalent series resistance, Re Z" + where, "Frequency (Hz)", "Re Z (\u03a9)", lines(evaluation, true)));
        if (evaluation.ripple() != null) {
            charts.add(ReportChart.linear("Ripple over one switching period" + where, "Time (s)", "Voltage (V)", List.of(new ReportChart.Line(
                    "ripple", evaluation.ripple().voltage().timesS(), evaluation.ripple().voltage().voltagesV()))));
        }
        if (evaluation.steps() != null) {
            double allowedV = evaluation.input().rail().loadStep().allowedDeviationV();
            double[] timeS = evaluation.steps().step().timeS();
            double[] whole = {0, timeS[timeS.length - 1]};
            charts.add(ReportChart.linear("Load step and release" + where, "Time (s)", "Deviation (V)", List.of(
                    new ReportChart.Line("step", timeS, evaluation.steps().step().deviationV()),
                    new ReportChart.Line("release", evaluation.steps().release().timeS(), evaluation.steps().release().deviationV()),
                    new ReportChart.Line("allowed above", whole, new double[] {allowedV, allowedV}, true),
                    new ReportChart.Line("allowed below", whole, new double[] {-allowedV, -allowedV}, true))));
        }
        return charts;
    }

    private static List<ReportChart.Line> withQuietLimit(Evaluation evaluation) {
        List<ReportChart.Line> lines = new ArrayList<>(lines(evaluation, false));
        if (evaluation.quiet().size() > 1) {
            lines.add(new ReportChart.Line("allowed in the quiet band", evaluation.quiet().stream().mapToDouble(QuietHarmonic::frequencyHz).toArray(),
                    evaluation.quiet().stream().mapToDouble(QuietHarmonic::limitOhm).toArray(), true));
        }
        return lines;
    }

    private static List<ReportChart.Line> lines(Evaluation evaluation, boolean resistance) {
        List<ReportChart.Line> lines = new ArrayList<>();
        lines.add(line("bank", evaluation.curves().bank(), resistance));
        for (int k = 0; k < evaluation.curves().branches().size(); k++) {
            lines.add(line(evaluation.input().branches().get(k).label(), evaluation.curves().branches().get(k), resistance));
        }
        return lines;
    }

    private static ReportChart.Line line(String label, Curve curve, boolean resistance) {
        double[] y = new double[curve.size()];
        for (int i = 0; i < y.length; i++) {
            y[i] = resistance ? curve.real(i) : curve.magnitude(i);
        }
        return new ReportChart.Line(label, curve.grid().toArray(), y);
    }

    private static String show(Double value, String unit) {
        return value == null ? "\u2013" : Quantity.format(value, unit);
    }
}
