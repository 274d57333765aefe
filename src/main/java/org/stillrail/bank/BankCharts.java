package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.KeyFrequencies;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.electrical.ripple.Waveform;
import org.stillrail.web.ChartData;
import org.stillrail.web.ChartData.Axis;
import org.stillrail.web.ChartData.Band;
import org.stillrail.web.ChartData.Mark;
import org.stillrail.web.ChartData.Point;
import org.stillrail.web.ChartData.Series;
import org.stillrail.web.Quantity;

/** The charts of a bank page, from one evaluation and perhaps a neighbour's that stands faint behind. */
final class BankCharts {

    private final Evaluation evaluation;
    private final Evaluation neighbour;

    private BankCharts(Evaluation evaluation, Evaluation neighbour) {
        this.evaluation = evaluation;
        this.neighbour = neighbour;
    }

    /** @param neighbour null for none */
    static BankCharts of(Evaluation evaluation, Evaluation neighbour) {
        return new BankCharts(evaluation, neighbour);
    }

    static String key(int branch) {
        return "b" + branch;
    }

    ChartData impedance() {
        List<Point> rings = evaluation.ribbon().rings().stream()
                .map(ring -> new Point(ring.frequencyHz(), ring.magnitudeOhm(), "rings, Q " + Quantity.format(ring.qualityFactor(), "", 2)))
                .toList();
        return overFrequency("|Z| of the bank and of each branch", Axis.log("|Z|", "\u03a9"), Curve::magnitude, rings);
    }

    ChartData resistance() {
        return overFrequency("Re Z, the ESR of the bank and of each branch", Axis.log("ESR", "\u03a9"),
                (curve, i) -> curve.real(i) > 0 ? curve.real(i) : Double.NaN, List.of());
    }

    ChartData share() {
        List<Series> series = new ArrayList<>();
        for (int k = 0; k < evaluation.curves().shares().size(); k++) {
            Curve share = evaluation.curves().shares().get(k);
            series.add(branch(k, share, (curve, i) -> 100 * curve.magnitude(i)));
        }
        return new ChartData("Share of the current in each branch; more than 100 % where current circulates", Axis.FREQUENCY,
                Axis.linear("|I branch / I total|", "%"), series, marks(), bands());
    }

    ChartData ripple() {
        Ripple ripple = evaluation.ripple();
        List<Series> series = new ArrayList<>();
        if (neighbour != null) {
            series.add(wave("neighbour", "neighbour", "reference", neighbour.ripple().voltage()));
        }
        series.add(wave("from-c", "by C", "branch", ripple.fromCapacitance()));
        series.add(wave("from-esr", "by ESR", "branch", ripple.fromResistance()));
        series.add(wave("from-esl", "by ESL", "branch", ripple.fromInductance()));
        series.add(wave("ripple", "ripple", "bank", ripple.voltage()));
        return new ChartData("Ripple voltage over one switching period and what C, ESR and ESL make of it", Axis.TIME,
                Axis.linear("Voltage", "V"), series, List.of(), List.of());
    }

    private static Series wave(String key, String label, String role, Waveform wave) {
        return Series.of(key, label, role, wave.timesS(), wave.voltagesV());
    }

    private ChartData overFrequency(String summary, Axis y, ToDoubleBiFunction<Curve, Integer> value, List<Point> points) {
        List<Series> series = new ArrayList<>();
        if (neighbour != null) {
            Curve behind = neighbour.curves().bank();
            series.add(Series.of("neighbour", "neighbour", "reference", behind.grid().toArray(), values(behind, value)));
        }
        for (int k = 0; k < evaluation.curves().branches().size(); k++) {
            series.add(branch(k, evaluation.curves().branches().get(k), value));
        }
        Curve bank = evaluation.curves().bank();
        series.add(Series.of("bank", "bank", "bank", bank.grid().toArray(), values(bank, value)));
        return new ChartData(summary, Axis.FREQUENCY, y, series, marks(), bands(), points, List.of());
    }

    private Series branch(int k, Curve curve, ToDoubleBiFunction<Curve, Integer> value) {
        BranchInput branch = evaluation.input().branches().get(k);
        ValidRange valid = branch.model().model().validRange();
        return Series.of(key(k), branch.label(), "branch", curve.grid().toArray(), values(curve, value))
                .drawnAs(branch.technology() == null ? null : branch.technology().key(), branch.measured() ? "measured" : "datasheet")
                .validBetween(valid.fromHz(), valid.toHz());
    }

    private static double[] values(Curve curve, ToDoubleBiFunction<Curve, Integer> value) {
        double[] values = new double[curve.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value.applyAsDouble(curve, i);
        }
        return values;
    }

    private List<Mark> marks() {
        KeyFrequencies f = evaluation.frequencies();
        return List.of(new Mark(f.crossoverHz(), "crossover"), new Mark(f.switchingHz(), "switching"));
    }

    private List<Band> bands() {
        KeyFrequencies f = evaluation.frequencies();
        return List.of(
                new Band(f.dampingFromHz(), f.dampingToHz(), "damping band", "damping"),
                new Band(f.quietFromHz(), f.quietToHz(), "quiet band", "quiet"));
    }
}
