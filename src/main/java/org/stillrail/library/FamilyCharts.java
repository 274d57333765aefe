package org.stillrail.library;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.SweepFamily;
import org.stillrail.electrical.capacitor.SweepFamily.Member;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.web.ChartData;
import org.stillrail.web.ChartData.Axis;
import org.stillrail.web.ChartData.Series;
import org.stillrail.web.Quantity;

/** Sweeps of one sample at several biases and temperatures, with what is interpolated half-way between neighbours. */
final class FamilyCharts {

    private static final int POINTS = 400;

    private FamilyCharts() {
    }

    /** None where the model is a single curve. */
    static List<PartCharts.PartChart> of(PartDocument part, SweepFamily family) {
        if (family.members().size() < 2) {
            return List.of();
        }
        List<Member> measured = family.members().stream()
                .sorted(Comparator.comparingDouble((Member member) -> member.point().temperatureC())
                        .thenComparingDouble(member -> Math.abs(member.point().biasV()))).toList();
        List<Member> between = new ArrayList<>();
        for (int i = 1; i < measured.size(); i++) {
            OperatingPoint a = measured.get(i - 1).point();
            OperatingPoint b = measured.get(i).point();
            if (a.temperatureC() == b.temperatureC() || Math.abs(a.biasV()) == Math.abs(b.biasV())) {
                between.add(family.near(new OperatingPoint(
                        (Math.abs(a.biasV()) + Math.abs(b.biasV())) / 2, (a.temperatureC() + b.temperatureC()) / 2, null)));
            }
        }
        return List.of(chart("family-magnitude", "Family over bias and temperature, |Z|", "|Z|", part, measured, between, true),
                chart("family-esr", "Family over bias and temperature, ESR", "ESR", part, measured, between, false));
    }

    private static PartCharts.PartChart chart(
            String id, String title, String axis, PartDocument part, List<Member> measured, List<Member> between, boolean magnitude) {
        List<Series> series = new ArrayList<>();
        double from = measured.stream().mapToDouble(member -> member.model().validRange().fromHz()).max().orElseThrow();
        double to = measured.stream().mapToDouble(member -> member.model().validRange().toHz()).min().orElseThrow();
        FrequencyGrid grid = FrequencyGrid.logSpaced(from, Math.max(to, from * 10), POINTS);
        for (Member member : measured) {
            series.add(line(label(member), "measured", part, member, grid, magnitude));
        }
        for (Member member : between) {
            series.add(line(label(member) + ", interpolated", "estimated", part, member, grid, magnitude));
        }
        return new PartCharts.PartChart(id, title, new ChartData(title, Axis.FREQUENCY, Axis.log(axis, "\u03a9"), series, List.of(), List.of()));
    }

    private static Series line(String label, String kind, PartDocument part, Member member, FrequencyGrid grid, boolean magnitude) {
        Curve curve = SweepCharts.on(member.model(), grid);
        double[] values = magnitude ? curve.magnitudes() : curve.reals();
        for (int i = 0; i < values.length; i++) {
            values[i] = values[i] > 0 ? values[i] : Double.NaN;
        }
        return Series.of(label, label, "branch", grid.toArray(), values).drawnAs(part.technology().key(), kind);
    }

    private static String label(Member member) {
        return Quantity.format(member.point().biasV(), "V", 3) + ", " + Quantity.format(member.point().temperatureC(), "degC", 3);
    }
}
