package org.stillrail.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.StandardChartTheme;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.NumberTickUnitSource;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.Range;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.w3c.dom.Document;

/**
 * A line chart as SVG for a page on paper: text drawn as outlines, so that it looks the same on every machine; colours of Okabe
 * and Ito's palette with a dash for each, so that a print in grey still reads; the first line, the bank, thickest; limits dotted.
 */
final class ReportChart {

    private static final int WIDTH = 660;
    private static final int HEIGHT = 253;
    private static final int TITLE_SIZE = 12;
    private static final int TEXT_SIZE = 10;
    private static final double DECADE = 10;

    private static final Color[] COLOURS = {new Color(0x1d2329), new Color(0x0072b2), new Color(0xd55e00), new Color(0x009e73),
        new Color(0xcc79a7), new Color(0xe69f00), new Color(0x56b4e9)};
    private static final Color LIMIT = new Color(0xa33d00);
    private static final float[][] DASHES = {null, null, {6, 3}, {2, 2}, {8, 3, 2, 3}, {10, 4}, {4, 4}};

    private static final Font FONT = font("DejaVuSans.ttf");

    private ReportChart() {
    }

    /**
     * One line; the arrays are of equal length, points that are not finite are left out.
     *
     * @param limit whether it says what is allowed, and not what is
     */
    record Line(String label, double[] x, double[] y, boolean limit) {

        Line(String label, double[] x, double[] y) {
            this(label, x, y, false);
        }
    }

    /** Both axes logarithmic; values of 0 and below are left out. */
    static String logLog(String title, String xLabel, String yLabel, List<Line> lines) {
        return svg(title, log(xLabel), log(yLabel), lines, true);
    }

    static String linear(String title, String xLabel, String yLabel, List<Line> lines) {
        return svg(title, plain(xLabel), plain(yLabel), lines, false);
    }

    private static ValueAxis log(String label) {
        LogAxis axis = new LogAxis(label);
        axis.setBase(DECADE);
        // One tick a decade, which the chart's own choice of ticks does not keep to.
        axis.setTickUnit(new NumberTickUnit(1));
        axis.setNumberFormatOverride(new EngineeringFormat());
        axis.setMinorTickMarksVisible(true);
        return axis;
    }

    private static ValueAxis plain(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setAutoRangeIncludesZero(false);
        axis.setStandardTickUnits(new NumberTickUnitSource(false, new EngineeringFormat()));
        return axis;
    }

    private static String svg(String title, ValueAxis x, ValueAxis y, List<Line> lines, boolean positiveOnly) {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        for (int k = 0; k < lines.size(); k++) {
            data.addSeries(series(k, lines.get(k), positiveOnly));
        }
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setLegendItemLabelGenerator((dataset, index) -> lines.get(index).label());
        XYPlot plot = new XYPlot(data, x, y, renderer);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(Color.LIGHT_GRAY);
        plot.setRangeGridlinePaint(Color.LIGHT_GRAY);
        JFreeChart chart = new JFreeChart(title, FONT.deriveFont((float) TITLE_SIZE), plot, true);
        StandardChartTheme theme = new StandardChartTheme("paper");
        theme.setExtraLargeFont(FONT.deriveFont((float) TITLE_SIZE));
        theme.setLargeFont(FONT.deriveFont((float) TEXT_SIZE));
        theme.setRegularFont(FONT.deriveFont((float) TEXT_SIZE));
        theme.setSmallFont(FONT.deriveFont((float) TEXT_SIZE));
        theme.setPlotBackgroundPaint(Color.WHITE);
        theme.setDomainGridlinePaint(Color.LIGHT_GRAY);
        theme.setRangeGridlinePaint(Color.LIGHT_GRAY);
        theme.setShadowVisible(false);
        theme.apply(chart);
        dress(renderer, lines);
        if (positiveOnly) {
            widen((LogAxis) y, data);
        }
        chart.setBackgroundPaint(Color.WHITE);
        chart.setElementHinting(false);
        return draw(chart);
    }

    /** After the theme, which has colours of its own. */
    private static void dress(XYLineAndShapeRenderer renderer, List<Line> lines) {
        for (int k = 0; k < lines.size(); k++) {
            if (lines.get(k).limit()) {
                renderer.setSeriesPaint(k, LIMIT);
                renderer.setSeriesStroke(k, new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {1, 2}, 0));
                continue;
            }
            renderer.setSeriesPaint(k, COLOURS[k % COLOURS.length]);
            float[] dash = DASHES[k % DASHES.length];
            float width = k == 0 ? 2.2f : 1.1f;
            renderer.setSeriesStroke(k, dash == null ? new BasicStroke(width)
                    : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0));
        }
    }

    /** At least a decade, so that a level line reads as level. */
    private static void widen(LogAxis axis, XYSeriesCollection data) {
        Range values = data.getRangeBounds(true);
        if (values != null && values.getUpperBound() < DECADE * values.getLowerBound()) {
            axis.setRange(values.getLowerBound() / Math.sqrt(DECADE), values.getUpperBound() * Math.sqrt(DECADE));
        }
    }

    /** The key is the index: two branches may carry the same name. */
    private static XYSeries series(int key, Line line, boolean positiveOnly) {
        XYSeries series = new XYSeries(key, false, true);
        for (int i = 0; i < line.x().length; i++) {
            double x = line.x()[i];
            double y = line.y()[i];
            if (Double.isFinite(x) && Double.isFinite(y) && (!positiveOnly || y > 0)) {
                series.add(x, y, false);
            }
        }
        return series;
    }

    private static String draw(JFreeChart chart) {
        Document document = SVGDOMImplementation.getDOMImplementation().createDocument(SVGDOMImplementation.SVG_NAMESPACE_URI, "svg", null);
        SVGGraphics2D graphics = new SVGGraphics2D(SVGGeneratorContext.createDefault(document), true);
        graphics.setSVGCanvasSize(new Dimension(WIDTH, HEIGHT));
        chart.draw(graphics, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        StringWriter text = new StringWriter();
        try {
            graphics.stream(text, true);
        } catch (SVGGraphics2DIOException e) {
            throw new IllegalStateException("A chart could not be written", e);
        }
        String whole = text.toString();
        return whole.substring(whole.indexOf("<svg"));
    }

    private static Font font(String name) {
        try (InputStream stream = ReportChart.class.getResourceAsStream(name)) {
            return Font.createFont(Font.TRUETYPE_FONT, stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("The report's font cannot be read", e);
        }
    }
}
