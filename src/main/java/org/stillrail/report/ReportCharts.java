package org.stillrail.report;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.QuietHarmonic;
import org.stillrail.electrical.evaluation.StepPair;

/** The pictures of a report, at the corner that the evaluation shows, as SVG. */
final class ReportCharts {

    private ReportCharts() {
    }

    static List<String> of(Evaluation evaluation) {
        List<String> charts = new ArrayList<>();
        String where = evaluation.input().distance() == null ? "" : ", at the load";
        charts.add(ReportChart.logLog("Magnitude of the impedance" + where, "Frequency (Hz)", "|Z| (\u03a9)", withQuietLimit(evaluation)));
        charts.add(ReportChart.logLog("Equivalent series resistance, Re Z" + where, "Frequency (Hz)", "Re Z (\u03a9)", lines(evaluation, true)));
        if (evaluation.ripple() != null) {
            charts.add(ReportChart.linear("Ripple over one switching period" + where, "Time (s)", "Voltage (V)", List.of(new ReportChart.Line(
                    "ripple", evaluation.ripple().voltage().timesS(), evaluation.ripple().voltage().voltagesV()))));
        }
        if (evaluation.steps() != null) {
            charts.add(ReportChart.linear("Load step and release" + where, "Time (s)", "Deviation (V)", step(evaluation)));
        }
        return charts;
    }

    /** A way that met a duty limit stands beside itself without one. */
    static List<ReportChart.Line> step(Evaluation evaluation) {
        StepPair steps = evaluation.steps();
        double allowedV = evaluation.input().rail().loadStep().allowedDeviationV();
        double[] timeS = steps.step().timeS();
        double[] whole = {0, timeS[timeS.length - 1]};
        List<ReportChart.Line> lines = new ArrayList<>(List.of(new ReportChart.Line("step", timeS, steps.step().deviationV()),
                new ReportChart.Line("release", steps.release().timeS(), steps.release().deviationV())));
        steps.heldBack(evaluation.stepsUnlimited()).forEach((name, response) ->
                lines.add(new ReportChart.Line(name + " without duty limits", response.timeS(), response.deviationV())));
        lines.add(new ReportChart.Line("allowed above", whole, new double[] {allowedV, allowedV}, true));
        lines.add(new ReportChart.Line("allowed below", whole, new double[] {-allowedV, -allowedV}, true));
        return lines;
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
}
