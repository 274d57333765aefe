package org.stillrail.web;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.document.CanonicalJson;

/**
 * What one chart on a page shows, as the browser's chart module reads it. Values are rounded to six significant digits:
 * more than a screen can show, and half the bytes.
 *
 * @param summary the chart in a sentence, for readers without the picture
 * @param xs      x of every series that has none of its own; found here where it is null
 * @param marks   frequencies or times that matter, drawn as labelled lines
 * @param bands   shaded ranges
 * @param points  ringed places with a label, such as an anti-resonance
 * @param notes   sentences under the chart
 * @param where   where it is seen, said behind the title of its figure; null where there is only one place
 */
public record ChartData(
        String summary, Axis x, Axis y, List<Double> xs, List<Series> series, List<Mark> marks, List<Band> bands, List<Point> points,
        List<String> notes, String where) {

    private static final int DIGITS = 6;

    public ChartData {
        if (xs == null && !series.isEmpty()) {
            List<Double> common = series.get(0).x();
            xs = common;
            series = series.stream().map(each -> common.equals(each.x()) ? each.onSharedX() : each).toList();
        }
        series = List.copyOf(series);
        marks = List.copyOf(marks);
        bands = List.copyOf(bands);
        points = List.copyOf(points);
        notes = List.copyOf(notes);
    }

    public ChartData(String summary, Axis x, Axis y, List<Series> series, List<Mark> marks, List<Band> bands) {
        this(summary, x, y, null, series, marks, bands, List.of(), List.of(), null);
    }

    public ChartData(
            String summary, Axis x, Axis y, List<Series> series, List<Mark> marks, List<Band> bands, List<Point> points, List<String> notes) {
        this(summary, x, y, null, series, marks, bands, points, notes, null);
    }

    /** @param place null for the only one */
    public ChartData at(String place) {
        return new ChartData(summary, x, y, xs, series, marks, bands, points, notes, place);
    }

    /** @param scale log or linear */
    public record Axis(String label, String unit, String scale) {

        public static final Axis FREQUENCY = new Axis("Frequency", "Hz", "log");
        public static final Axis TIME = new Axis("Time", "s", "linear");

        public static Axis log(String label, String unit) {
            return new Axis(label, unit, "log");
        }

        public static Axis linear(String label, String unit) {
            return new Axis(label, unit, "linear");
        }
    }

    /**
     * One line.
     *
     * @param key        the same key has the same colour on every chart of a page
     * @param role       bank, branch, measured, reference or limit
     * @param technology key of the technology, which gives the dash, or null
     * @param kind       measured or datasheet, or null
     * @param validFrom  where the line stops being extrapolated, or null
     * @param validTo    where it starts again, or null
     * @param low        lower edge of its uncertainty, or null
     * @param high       upper edge, or null
     */
    public record Series(
            String key, String label, String role, String technology, String kind, List<Double> x, List<Double> y, Double validFrom,
            Double validTo, List<Double> low, List<Double> high) {

        public static Series of(String key, String label, String role, double[] x, double[] y) {
            return new Series(key, label, role, null, null, rounded(x), rounded(y), null, null, null, null);
        }

        private Series onSharedX() {
            return new Series(key, label, role, technology, kind, null, y, validFrom, validTo, low, high);
        }

        public Series drawnAs(String newTechnology, String newKind) {
            return new Series(key, label, role, newTechnology, newKind, x, y, validFrom, validTo, low, high);
        }

        public Series validBetween(double from, double to) {
            return new Series(key, label, role, technology, kind, x, y, from > 0 ? from : null, Double.isFinite(to) ? to : null,
                    low, high);
        }

        /** With a band of uncertainty round it, each edge as long as the line. */
        public Series between(double[] lowest, double[] highest) {
            return new Series(key, label, role, technology, kind, x, y, validFrom, validTo, rounded(lowest), rounded(highest));
        }
    }

    public record Mark(double at, String label) {
    }

    /** @param kind damping or quiet */
    public record Band(double from, double to, String label, String kind) {
    }

    public record Point(double x, double y, String label) {
    }

    public String json() {
        return CanonicalJson.write(this);
    }

    private static List<Double> rounded(double[] values) {
        List<Double> rounded = new ArrayList<>(values.length);
        for (double value : values) {
            rounded.add(Double.isFinite(value) ? round(value) : null);
        }
        return rounded;
    }

    private static double round(double value) {
        if (value == 0) {
            return 0;
        }
        double scale = Math.pow(10, DIGITS - 1 - Math.floor(Math.log10(Math.abs(value))));
        double rounded = Math.rint(value * scale) / scale;
        return Double.isFinite(rounded) ? rounded : value;
    }
}
