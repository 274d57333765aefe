package org.stillrail.library;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.Ageing;
import org.stillrail.electrical.capacitor.Band;
import org.stillrail.electrical.capacitor.CeramicCode;
import org.stillrail.electrical.capacitor.CharacteristicCurve;
import org.stillrail.electrical.capacitor.Characteristics;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.library.PartCharts.PartChart;
import org.stillrail.web.ChartData;
import org.stillrail.web.ChartData.Axis;
import org.stillrail.web.ChartData.Mark;
import org.stillrail.web.ChartData.Series;

/** One chart for each characteristic that is known of a part: what the calculation bends its model by. */
final class PartChangeCharts {

    private static final int AGE_POINTS = 51;
    private static final double FIRST_HOURS = 1;
    private static final double LAST_HOURS = 1e5;
    /** As near to 25 degC as the band of a class 2 code is drawn, which is one point there. */
    private static final double NEARLY_K = 0.01;

    private PartChangeCharts() {
    }

    static List<PartChart> of(PartDocument part, PartModel model) {
        PartCharacteristics drawn = part.characteristics();
        Characteristics used = model.characteristics();
        String technology = part.technology().key();
        List<PartChart> charts = new ArrayList<>();
        if (used.overBias() != null) {
            charts.add(curve("change-bias", "Capacitance over DC bias", Axis.linear("DC bias", "V"), "Capacitance left", used.overBias(),
                    used.overBias().at(0), technology, List.of(new Mark(part.ratedVoltageV(), "rated"))));
        }
        double referenceC = OperatingPoint.REFERENCE.temperatureC();
        if (used.overTemperature() != null) {
            charts.add(curve("change-temperature", "Capacitance over temperature", Axis.linear("Temperature", "\u00b0C"), "Capacitance left",
                    used.overTemperature(), used.overTemperature().at(referenceC), technology, List.of()));
        } else if (used.code() != null) {
            charts.add(code(used.code(), technology));
        }
        if (used.ageing() != null && used.ageing().percentPerDecade() > 0) {
            charts.add(ageing(used.ageing(), drawn.ageing() == null, technology));
        }
        if (used.resistance() != null) {
            charts.add(curve("change-esr", "ESR over temperature", Axis.linear("Temperature", "\u00b0C"), "ESR over that at 25 \u00b0C",
                    used.resistance().factor(), used.resistance().factor().at(referenceC), technology, List.of()));
        }
        if (drawn.rippleOverFrequency() != null) {
            charts.add(curve("change-ripple-frequency", "Ripple rating over frequency", Axis.FREQUENCY, "Of the stated rating",
                    drawn.rippleOverFrequency(), 1, technology, List.of()));
        }
        if (drawn.rippleOverTemperature() != null) {
            charts.add(curve("change-ripple-temperature", "Ripple rating over temperature", Axis.linear("Ambient", "\u00b0C"), "Of the stated rating",
                    drawn.rippleOverTemperature(), 1, technology, List.of()));
        }
        return charts;
    }

    private static PartChart curve(
            String id, String title, Axis x, String label, CharacteristicCurve curve, double reference, String technology, List<Mark> marks) {
        double[] at = curve.points().stream().mapToDouble(CharacteristicCurve.Point::x).toArray();
        double[] share = curve.points().stream().mapToDouble(point -> 100 * point.y() / reference).toArray();
        Series line = Series.of("curve", "as drawn", "branch", at, share).drawnAs(technology, "datasheet");
        return chart(id, title, x, label, line, marks);
    }

    private static PartChart code(CeramicCode code, String technology) {
        double referenceC = OperatingPoint.REFERENCE.temperatureC();
        double[] at = {code.lowC(), referenceC - NEARLY_K, referenceC, referenceC + NEARLY_K, code.highC()};
        double[] typical = new double[at.length];
        double[] least = new double[at.length];
        double[] most = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            Band share = code.shareAt(at[i]);
            typical[i] = 100 * share.typical();
            least[i] = 100 * share.least();
            most[i] = 100 * share.most();
        }
        Series line = Series.of("curve", code.code() + " at most", "branch", at, typical).drawnAs(technology, "estimated").between(least, most);
        return chart("change-temperature", "Capacitance over temperature, bounds of " + code.code(), Axis.linear("Temperature", "\u00b0C"),
                "Capacitance left", line, List.of());
    }

    private static PartChart ageing(Ageing law, boolean estimated, String technology) {
        double[] hours = new double[AGE_POINTS];
        double[] share = new double[AGE_POINTS];
        for (int i = 0; i < AGE_POINTS; i++) {
            hours[i] = FIRST_HOURS * Math.pow(LAST_HOURS / FIRST_HOURS, i / (AGE_POINTS - 1.0));
            share[i] = 100 * law.share(hours[i]);
        }
        Series line = Series.of("curve", estimated ? "usual for the code" : "as stated", "branch", hours, share)
                .drawnAs(technology, estimated ? "estimated" : "datasheet");
        return chart("change-age", "Capacitance over age", Axis.log("Since the last heat", "h"), "Of that at the referee time", line,
                List.of(new Mark(law.refereeHours(), "referee time")));
    }

    private static PartChart chart(String id, String title, Axis x, String label, Series line, List<Mark> marks) {
        return new PartChart(id, title, new ChartData(title, x, Axis.linear(label, "%"), List.of(line), marks, List.of()));
    }
}
