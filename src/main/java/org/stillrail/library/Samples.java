package org.stillrail.library;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.quality.SampleSpread;
import org.stillrail.electrical.quality.SweepFigure;
import org.stillrail.electrical.quality.SweepFigures;
import org.stillrail.web.Quantity;

/** The figures of a part over all its samples, at the bias and temperature at which most were measured. */
record Samples(String conditions, List<Line> lines, List<String> outliers) {

    private static final double SAME_TEMPERATURE_C = 2;

    /** One figure in words, with how many samples back it. */
    record Line(String name, String median, String range, String spread, String samples, String repeats, String outliers) {
    }

    /** Null where nothing was measured. @param testHz where the part's datasheet states the capacitance */
    static Samples of(List<Sweep> sweeps, double testHz) {
        List<Sweep> group = largestGroup(sweeps.stream().filter(sweep -> sweep.points() > 1).toList());
        if (group.isEmpty()) {
            return null;
        }
        Map<String, Map<String, List<Double>>> byFigure = new LinkedHashMap<>();
        Map<String, String> units = new LinkedHashMap<>();
        for (Sweep sweep : group) {
            for (SweepFigure figure : figures(sweep, testHz)) {
                if (figure.value() != null) {
                    units.put(figure.name(), figure.unit());
                    byFigure.computeIfAbsent(figure.name(), name -> new LinkedHashMap<>())
                            .computeIfAbsent(sample(sweep), name -> new ArrayList<>()).add(figure.value());
                }
            }
        }
        List<Line> lines = new ArrayList<>();
        List<String> outliers = new ArrayList<>();
        byFigure.forEach((name, bySample) -> {
            SampleSpread spread = SampleSpread.of(name, units.get(name), bySample);
            lines.add(line(spread));
            spread.outliers().stream().filter(sample -> !outliers.contains(sample)).forEach(outliers::add);
        });
        SweepProvenance at = group.get(0).provenance();
        return new Samples(Quantity.format(at.biasV(), "V") + ", " + Quantity.format(at.temperatureC(), "degC"), lines, outliers);
    }

    private static List<SweepFigure> figures(Sweep sweep, double testHz) {
        Curve curve = sweep.document().impedance();
        TableModel model = TableModel.of(curve.grid().toArray(), curve.reals(), curve.imaginaries());
        return SweepFigures.of(model, new ValidRange(sweep.startHz(), sweep.stopHz()), testHz, null);
    }

    /** A sweep without a named sample is a sample of its own. */
    static String sample(Sweep sweep) {
        return sweep.provenance().sample() == null ? sweep.fileName() : sweep.provenance().sample();
    }

    private static List<Sweep> largestGroup(List<Sweep> sweeps) {
        List<Sweep> largest = List.of();
        for (Sweep one : sweeps) {
            List<Sweep> group = sweeps.stream().filter(other -> alike(one, other)).toList();
            if (samples(group) > samples(largest)) {
                largest = group;
            }
        }
        return largest;
    }

    private static long samples(List<Sweep> group) {
        return group.stream().map(Samples::sample).distinct().count();
    }

    /** Under the same conditions. */
    static boolean alike(Sweep one, Sweep other) {
        return one.provenance().biasV() == other.provenance().biasV()
                && Math.abs(one.provenance().temperatureC() - other.provenance().temperatureC()) <= SAME_TEMPERATURE_C;
    }

    private static Line line(SampleSpread spread) {
        return new Line(spread.name(), Quantity.format(spread.median(), spread.unit()),
                spread.samples() == 1 ? "\u2013" : Quantity.format(spread.lowest(), spread.unit(), 3) + " \u2013 "
                        + Quantity.format(spread.highest(), spread.unit(), 3),
                spread.samples() == 1 ? "\u2013" : Quantity.format(spread.spreadPercent(), "%", 2),
                spread.samples() + (spread.repeats() > spread.samples() ? " (" + spread.repeats() + " sweeps)" : ""),
                spread.repeatPercent() == null ? "\u2013" : Quantity.format(spread.repeatPercent(), "%", 2),
                spread.outliers().isEmpty() ? "\u2013" : String.join(", ", spread.outliers()));
    }
}
