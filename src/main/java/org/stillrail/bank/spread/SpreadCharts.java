package org.stillrail.bank.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillrail.electrical.evaluation.BankSpread;
import org.stillrail.electrical.evaluation.LimitSpread;
import org.stillrail.electrical.requirement.Bound;
import org.stillrail.electrical.spread.FigureSpread;
import org.stillrail.electrical.spread.RandomFigure;
import org.stillrail.web.ChartData;
import org.stillrail.web.ChartData.Axis;
import org.stillrail.web.ChartData.Band;
import org.stillrail.web.ChartData.Mark;
import org.stillrail.web.ChartData.Series;
import org.stillrail.web.Quantity;

/** One histogram for each figure that strays, with median, 5 % and 95 %, and with the rail's limits. */
final class SpreadCharts {

    private static final int BINS = 40;
    /** A limit further away than this many widths of the histogram would squeeze it to a line; it is said in words instead. */
    private static final double FAR = 3;
    private static final double ALIKE = 1e-9;
    private static final double HARDLY = 0.01;

    private SpreadCharts() {
    }

    record SpreadChart(String id, String title, ChartData data) {
    }

    static List<SpreadChart> of(BankSpread spread) {
        return spread.result().figures().stream().filter(SpreadCharts::worthDrawing).map(figure -> chart(figure, spread)).toList();
    }

    static boolean strays(FigureSpread figure) {
        return figure.most() - figure.least() > ALIKE * Math.abs(figure.most());
    }

    /** What a branch bears is one of many figures: where it hardly moves, its line in the table says all. Of the load step the larger side is drawn. */
    private static boolean worthDrawing(FigureSpread figure) {
        if (figure.figure().kind() == RandomFigure.UNDERSHOOT || figure.figure().kind() == RandomFigure.OVERSHOOT) {
            return false;
        }
        if (Double.isInfinite(figure.most())) {
            return false;
        }
        return figure.figure().branch() == null ? strays(figure) : figure.most() - figure.least() > HARDLY * Math.abs(figure.most());
    }

    private static SpreadChart chart(FigureSpread figure, BankSpread spread) {
        List<LimitSpread> limits = spread.limits().stream().filter(each -> each.limit().figure().equals(figure.figure())).toList();
        List<Mark> marks = new ArrayList<>(List.of(
                new Mark(figure.quantile(0.05).value(), "5 %"), new Mark(figure.quantile(0.5).value(), "median"),
                new Mark(figure.quantile(0.95).value(), "95 %")));
        List<Band> bands = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        double from = figure.least();
        double to = figure.most();
        for (LimitSpread each : limits) {
            double limit = each.limit().limit();
            String words = (each.limit().bound() == Bound.AT_MOST ? "at most " : "at least ") + show(limit, figure);
            if (limit < figure.least() - FAR * (figure.most() - figure.least()) || limit > figure.most() + FAR * (figure.most() - figure.least())) {
                notes.add("The limit, " + words + ", lies beyond the chart.");
                continue;
            }
            from = Math.min(from, limit);
            to = Math.max(to, limit);
            marks.add(new Mark(limit, words));
            bands.add(each.limit().bound() == Bound.AT_MOST ? new Band(limit, Double.MAX_VALUE, "not kept", "forbidden")
                    : new Band(-Double.MAX_VALUE, limit, "not kept", "forbidden"));
        }
        Integer branch = figure.figure().branch();
        String id = figure.figure().kind().name().toLowerCase(Locale.ROOT).replace('_', '-') + (branch == null ? "" : "-" + branch);
        String summary = figure.figure().label() + " of " + spread.question().runs() + " random banks: from " + show(figure.least(), figure)
                + " to " + show(figure.most(), figure) + ", median " + show(figure.quantile(0.5).value(), figure) + ".";
        return new SpreadChart(id, figure.figure().label(), new ChartData(summary,
                Axis.linear(figure.figure().label(), axisUnit(figure.figure().unit())),
                Axis.linear("Share of the banks", "%"), List.of(steps(figure, from, to)), marks, bands, List.of(), notes));
    }

    private static String axisUnit(String unit) {
        return switch (unit) {
            case "ohm" -> "\u03a9";
            case "degC" -> "\u00b0C";
            default -> unit;
        };
    }

    private static String show(double value, FigureSpread figure) {
        return Quantity.format(value, figure.figure().unit());
    }

    /** The outline of the histogram, drawn on at nothing as far as a limit beyond it. */
    private static Series steps(FigureSpread figure, double from, double to) {
        int[] counts = figure.histogram(BINS);
        double width = (figure.most() - figure.least()) / BINS;
        double[] x = new double[2 * BINS + 4];
        double[] y = new double[x.length];
        x[0] = from;
        x[1] = figure.least();
        for (int i = 0; i < BINS; i++) {
            x[2 * i + 2] = figure.least() + i * width;
            x[2 * i + 3] = figure.least() + (i + 1) * width;
            y[2 * i + 2] = 100.0 * counts[i] / figure.runs();
            y[2 * i + 3] = y[2 * i + 2];
        }
        x[x.length - 2] = figure.most();
        x[x.length - 1] = to;
        double[] ground = new double[x.length];
        return Series.of("banks", "banks in a bin", "branch", x, y).drawnAs(null, "exact").between(ground, y);
    }
}
