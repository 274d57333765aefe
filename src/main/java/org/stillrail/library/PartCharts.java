package org.stillrail.library;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.curve.Thinning;
import org.stillrail.web.ChartData;
import org.stillrail.web.ChartData.Axis;
import org.stillrail.web.ChartData.Series;

/** The charts of a part page: the datasheet's model and every sweep over each other. */
@Component
class PartCharts {

    private static final int DATASHEET_POINTS = 400;
    private static final double LOWEST_HZ = 10;
    private static final double HIGHEST_HZ = 100e6;

    private final PartModels models;

    PartCharts(PartModels models) {
        this.models = models;
    }

    /** One chart with its place in the page. */
    record PartChart(String id, String title, ChartData data) {
    }

    /** @param chosen the part at operating points that were asked for */
    List<PartChart> of(PartDocument part, List<Sweep> sweeps, List<PartAtPoint> chosen) {
        List<Line> lines = lines(part, sweeps);
        FrequencyGrid grid = lines.get(lines.size() - 1).curve().grid();
        for (int i = 0; i < chosen.size(); i++) {
            lines.add(line("chosen" + i, chosen.get(i).label(), part.technology().key(), "exact", chosen.get(i).bent().model(), grid));
        }
        return List.of(
                chart("magnitude", "Magnitude of the impedance", Axis.log("|Z|", "\u03a9"), lines, Curve::magnitude),
                chart("esr", "Equivalent series resistance, Re Z", Axis.log("ESR", "\u03a9"), lines,
                        (curve, i) -> positive(curve.real(i))),
                chart("phase", "Phase of the impedance", Axis.linear("Phase", "\u00b0"), lines, Curve::phaseDeg),
                chart("capacitance", "Effective series capacitance, \u22121/(\u03c9 Im Z), below resonance", Axis.log("C", "F"), lines,
                        (curve, i) -> positive(-1 / (curve.grid().omega(i) * curve.imaginary(i)))),
                chart("inductance", "Effective series inductance, Im Z/\u03c9, above resonance", Axis.log("L", "H"), lines,
                        (curve, i) -> positive(curve.imaginary(i) / curve.grid().omega(i))));
    }

    /** A file that is not stored yet, over the datasheet's model: |Z| shows a wrong unit, the phase a wrong sign. */
    List<PartChart> preview(PartDocument part, String fileName, Curve curve) {
        Line read = new Line("file", fileName, part.technology().key(), "measured",
                Thinning.keepingPeaks(curve, SweepFit.MOST_POINTS_DRAWN));
        List<Line> lines = List.of(read, datasheet(part, curve.grid().startHz(), curve.grid().stopHz()));
        return List.of(
                chart("preview-magnitude", "Magnitude as the file is read now", Axis.log("|Z|", "\u03a9"), lines, Curve::magnitude),
                chart("preview-phase", "Phase as the file is read now", Axis.linear("Phase", "\u00b0"), lines, Curve::phaseDeg));
    }

    /** A curve with the way it is drawn. */
    private record Line(String key, String label, String technology, String kind, Curve curve) {
    }

    private List<Line> lines(PartDocument part, List<Sweep> sweeps) {
        List<Line> lines = new ArrayList<>();
        for (Sweep sweep : sweeps) {
            SweepDocument document = sweep.document();
            Curve curve = Thinning.keepingPeaks(document.impedance(), SweepFit.MOST_POINTS_DRAWN);
            lines.add(new Line(sweep.id().toString(), sweep.label(), part.technology().key(), "measured", curve));
        }
        double from = sweeps.stream().mapToDouble(Sweep::startHz).min().orElse(LOWEST_HZ);
        double to = sweeps.stream().mapToDouble(Sweep::stopHz).max().orElse(HIGHEST_HZ);
        lines.add(datasheet(part, from, to));
        return lines;
    }

    /** The datasheet's model between two frequencies. */
    Curve sheet(PartDocument part, double fromHz, double toHz) {
        return datasheet(part, fromHz, toHz).curve();
    }

    private Line datasheet(PartDocument part, double fromHz, double toHz) {
        FrequencyGrid grid = FrequencyGrid.logSpaced(fromHz, Math.max(toHz, fromHz * 10), DATASHEET_POINTS);
        return line("datasheet", "Datasheet model", part.technology().key(), "datasheet", models.ofDatasheet(part).model(), grid);
    }

    private static Line line(String key, String label, String technology, String kind, ImpedanceModel model, FrequencyGrid grid) {
        double[] resistance = new double[grid.size()];
        double[] reactance = new double[grid.size()];
        model.addImpedanceTo(grid, resistance, reactance);
        return new Line(key, label, technology, kind, new Curve(grid, resistance, reactance));
    }

    private static PartChart chart(String id, String title, Axis y, List<Line> lines, ToDoubleBiFunction<Curve, Integer> value) {
        List<Series> series = new ArrayList<>();
        for (Line line : lines) {
            double[] values = new double[line.curve().size()];
            for (int i = 0; i < values.length; i++) {
                values[i] = value.applyAsDouble(line.curve(), i);
            }
            series.add(Series.of(line.key(), line.label(), "branch", line.curve().grid().toArray(), values)
                    .drawnAs(line.technology(), line.kind()));
        }
        return new PartChart(id, title, new ChartData(title + " over frequency", Axis.FREQUENCY, y, series, List.of(), List.of()));
    }

    /** A logarithmic axis has no place for zero and below. */
    private static double positive(double value) {
        return value > 0 ? value : Double.NaN;
    }
}
