package org.stillrail.library;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.quality.Finding;
import org.stillrail.electrical.quality.FrequencySpan;
import org.stillrail.sweepfile.accuracy.FrequencyBand;
import org.stillrail.web.ChartData;
import org.stillrail.web.ChartData.Axis;
import org.stillrail.web.ChartData.Band;
import org.stillrail.web.ChartData.Series;
import org.stillrail.web.Quantity;

/** The charts of one sweep: the points with their uncertainty, the fit over them, and the fit's error for |Z| and apart for the ESR. */
final class SweepCharts {

    static final int MOST_SPANS = 12;
    private static final double SMALLEST_SPAN = 1.02;

    private final PartDocument part;
    private final SweepFit fit;
    private final Trust trust;
    private final Curve sheet;
    private final List<Band> bands = new ArrayList<>();

    private SweepCharts(PartDocument part, SweepFit fit, Trust trust, Curve sheet, List<Finding> findings) {
        this.part = part;
        this.fit = fit;
        this.trust = trust;
        this.sheet = sheet;
        for (Finding finding : findings) {
            finding.where().stream().limit(MOST_SPANS).forEach(span -> bands.add(band(span, finding.kind().label())));
        }
    }

    /**
     * @param trust of the curve that the fit draws
     * @param sheet the datasheet's model on some grid
     */
    static List<PartCharts.PartChart> of(PartDocument part, SweepFit fit, Trust trust, Curve sheet, List<Finding> findings) {
        SweepCharts charts = new SweepCharts(part, fit, trust, sheet, findings);
        List<PartCharts.PartChart> all = new ArrayList<>(List.of(charts.magnitude(), charts.resistance()));
        if (fit.fit() != null) {
            all.add(charts.magnitudeError());
            all.add(charts.resistanceError());
        }
        return all;
    }

    private PartCharts.PartChart magnitude() {
        Curve curve = fit.curve();
        List<Series> series = new ArrayList<>();
        series.add(Series.of("sweep", "measured", "measured", curve.grid().toArray(), curve.magnitudes()).drawnAs(part.technology().key(), "measured")
                .between(trust.uncertainty().lowestMagnitudeOhm(), trust.uncertainty().highestMagnitudeOhm()));
        if (fit.fit() != null) {
            series.add(Series.of("fit", "fit", "reference", curve.grid().toArray(), fitted().magnitudes()).drawnAs(null, "fitted"));
        }
        series.add(Series.of("datasheet", "datasheet", "branch", sheet.grid().toArray(), sheet.magnitudes()).drawnAs(part.technology().key(), "datasheet"));
        double[] shields = trust.shieldErrorShown();
        if (shields != null) {
            series.add(Series.of("shields", "error of the shields", "limit", curve.grid().toArray(), shields));
        }
        List<Band> shown = new ArrayList<>(bands);
        trust.untrusted().stream().limit(MOST_SPANS).forEach(band -> shown.add(untrusted(band)));
        return chart("sweep-magnitude", "Magnitude of the impedance, with its uncertainty", Axis.log("|Z|", "\u03a9"), series, shown);
    }

    private PartCharts.PartChart resistance() {
        Curve curve = fit.curve();
        List<Series> series = new ArrayList<>();
        series.add(Series.of("sweep", "measured", "measured", curve.grid().toArray(), positive(curve.reals())).drawnAs(part.technology().key(), "measured")
                .between(trust.uncertainty().lowestResistanceOhm(), trust.uncertainty().highestResistanceOhm()));
        if (fit.fit() != null) {
            series.add(Series.of("fit", "fit", "reference", curve.grid().toArray(), positive(fitted().reals())).drawnAs(null, "fitted"));
        }
        series.add(Series.of("datasheet", "datasheet", "branch", sheet.grid().toArray(), positive(sheet.reals())).drawnAs(part.technology().key(), "datasheet"));
        List<Band> shown = new ArrayList<>(bands);
        for (FrequencyBand unknown : trust.uncertainty().unknownResistanceBands().stream().limit(MOST_SPANS).toList()) {
            shown.add(band(new FrequencySpan(unknown.startHz(), unknown.stopHz()), "ESR not known"));
        }
        return chart("sweep-esr", "Equivalent series resistance, with its uncertainty", Axis.log("ESR", "\u03a9"), series, shown);
    }

    private PartCharts.PartChart magnitudeError() {
        Curve curve = fit.curve();
        Curve fitted = fitted();
        double[] percent = new double[curve.size()];
        for (int i = 0; i < percent.length; i++) {
            percent[i] = 100 * (fitted.magnitude(i) / curve.magnitude(i) - 1);
        }
        return chart("fit-magnitude", "Error of the fit in |Z|", Axis.linear("Error of |Z|", "%"),
                List.of(Series.of("fit", "fit", "branch", curve.grid().toArray(), percent)), List.of());
    }

    private PartCharts.PartChart resistanceError() {
        Curve curve = fit.curve();
        Curve fitted = fitted();
        double[] percent = new double[curve.size()];
        for (int i = 0; i < percent.length; i++) {
            percent[i] = curve.real(i) == 0 ? Double.NaN : 100 * (fitted.real(i) - curve.real(i)) / Math.abs(curve.real(i));
        }
        return chart("fit-esr", "Error of the fit in the ESR", Axis.linear("Error of the ESR", "%"),
                List.of(Series.of("fit", "fit", "branch", curve.grid().toArray(), percent)), List.of());
    }

    private Curve fitted() {
        return on(fit.fit().model(), fit.curve().grid());
    }

    static Curve on(ImpedanceModel model, FrequencyGrid grid) {
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        model.addImpedanceTo(grid, r, x);
        return new Curve(grid, r, x);
    }

    static Band untrusted(FrequencyBand band) {
        return new Band(band.startHz(), band.stopHz(), "|Z| not trusted", "untrusted");
    }

    private static PartCharts.PartChart chart(String id, String title, Axis y, List<Series> series, List<Band> bands) {
        String where = series.get(0).label() + " from " + Quantity.format(bandsStart(series), "Hz", 3);
        return new PartCharts.PartChart(id, title, new ChartData(title + " over frequency, " + where, Axis.FREQUENCY, y, series, List.of(), bands));
    }

    private static double bandsStart(List<Series> series) {
        return series.get(0).x().get(0);
    }

    private static Band band(FrequencySpan span, String label) {
        boolean narrow = span.toHz() < span.fromHz() * SMALLEST_SPAN;
        return new Band(narrow ? span.fromHz() / Math.sqrt(SMALLEST_SPAN) : span.fromHz(), narrow ? span.fromHz() * Math.sqrt(SMALLEST_SPAN) : span.toHz(),
                label, "finding");
    }

    private static double[] positive(double[] values) {
        double[] shown = values.clone();
        for (int i = 0; i < shown.length; i++) {
            shown[i] = shown[i] > 0 ? shown[i] : Double.NaN;
        }
        return shown;
    }
}
