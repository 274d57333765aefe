package org.stillrail.bank;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.converter.LoopResult;
import org.stillrail.electrical.converter.TargetImpedance;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.KeyFrequencies;
import org.stillrail.electrical.evaluation.LoadPattern;
import org.stillrail.electrical.evaluation.QuietHarmonic;
import org.stillrail.electrical.evaluation.StepPair;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.electrical.ripple.Waveform;
import org.stillrail.electrical.step.LoadCourse;
import org.stillrail.electrical.step.StepResult;
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

    /** Null at one node. */
    private String atLoad() {
        return evaluation.input().distance() == null ? null : Node.LOAD.label();
    }

    private String sensed() {
        return evaluation.input().distance() == null ? null : "sensed " + evaluation.input().distance().sense().label();
    }

    ChartData impedance() {
        List<Point> rings = evaluation.ribbon().rings().stream()
                .map(ring -> new Point(ring.frequencyHz(), ring.magnitudeOhm(), "rings, Q " + Quantity.format(ring.qualityFactor(), "", 2)))
                .toList();
        List<Series> more = new ArrayList<>(quietLimit());
        if (evaluation.fromConverter() != null) {
            Curve transfer = evaluation.fromConverter().bank();
            more.add(Series.of("from-converter", "converter to load", "reference", transfer.grid().toArray(), transfer.magnitudes()));
        }
        return overFrequency("|Z| of the bank and of each branch", Axis.log("|Z|", "\u03a9"), Curve::magnitude, rings, more);
    }

    ChartData resistance() {
        return overFrequency("Re Z, the ESR of the bank and of each branch", Axis.log("ESR", "\u03a9"),
                (curve, i) -> curve.real(i) > 0 ? curve.real(i) : Double.NaN, List.of(), List.of());
    }

    ChartData share() {
        List<Series> series = new ArrayList<>();
        for (int k = 0; k < evaluation.curves().shares().size(); k++) {
            Curve share = evaluation.curves().shares().get(k);
            series.add(branch(k, share, (curve, i) -> 100 * curve.magnitude(i)));
        }
        return new ChartData("Share of the current " + (atLoad() == null ? "" : "that the load draws ") + "in each branch; more than 100 % where current circulates", Axis.FREQUENCY,
                Axis.linear("|I branch / I total|", "%"), series, marks(), bands()).at(atLoad() == null ? null : "drawn at the load");
    }

    /** Null for a flyback of unknown turns. */
    ChartData ripple() {
        Ripple ripple = evaluation.ripple();
        if (ripple == null) {
            return null;
        }
        List<Series> series = new ArrayList<>();
        if (neighbour != null && neighbour.ripple() != null) {
            series.add(wave("neighbour", "neighbour", "reference", neighbour.ripple().voltage()));
        }
        series.add(wave("from-c", "by C", "branch", ripple.fromCapacitance()));
        series.add(wave("from-esr", "by ESR", "branch", ripple.fromResistance()));
        series.add(wave("from-esl", "by ESL", "branch", ripple.fromInductance()));
        if (evaluation.rippleAtConverter() != null) {
            series.add(wave("at-converter", "at the converter", "reference", evaluation.rippleAtConverter().voltage()));
        }
        series.add(wave("ripple", "ripple", "bank", ripple.voltage()));
        return new ChartData("Ripple voltage over one switching period and what C, ESR and ESL make of it", Axis.TIME,
                Axis.linear("Voltage", "V"), series, List.of(), List.of(), List.of(), List.of(evaluation.input().rail().converter().topology() == Topology.DRAWN
                        ? "Under the current that the rail draws." : "Stated for continuous conduction.")).at(atLoad());
    }

    /** Null where no load step is asked or it cannot be had. */
    ChartData step() {
        StepPair steps = evaluation.steps();
        if (steps == null) {
            return null;
        }
        List<Series> series = new ArrayList<>();
        if (neighbour != null && neighbour.steps() != null) {
            series.add(Series.of("neighbour", "neighbour", "reference", neighbour.steps().step().timeS(), neighbour.steps().step().deviationV()));
        }
        if (evaluation.stepsAlone() != null) {
            series.add(alone(evaluation.stepsAlone().step(), Math.max(steps.undershootV(), evaluation.input().rail().loadStep().allowedDeviationV())));
        }
        steps.heldBack(evaluation.stepsUnlimited()).forEach((name, response) -> series.add(unlimited(name, response)));
        series.add(Series.of("release", "release", "branch", steps.release().timeS(), steps.release().deviationV()));
        series.add(Series.of("step", "step", "bank", steps.step().timeS(), steps.step().deviationV()));
        series.addAll(allowed(steps.step().timeS()[steps.step().timeS().length - 1]));
        return new ChartData("Deviation of the output after the load step and after its release"
                + (evaluation.stepsUnlimited() == null ? "" : ", beside what it would be without duty limits"), Axis.TIME, Axis.linear("Deviation", "V"),
                series, List.of(), List.of()).at(atLoad());
    }

    private static Series unlimited(String name, StepResult response) {
        return Series.of(name + "-unlimited", name + " without duty limits", "reference", response.timeS(), response.deviationV()).drawnAs(null, "linear");
    }

    /** Without the loop the output falls without end; so far as it still says something beside the rest. */
    private static Series alone(StepResult step, double besideV) {
        double[] deviationV = step.deviationV();
        int until = 0;
        while (until < deviationV.length && Math.abs(deviationV[until]) <= 2 * besideV) {
            until++;
        }
        return Series.of("step-alone", "step, bank alone", "reference", Arrays.copyOf(step.timeS(), until), Arrays.copyOf(deviationV, until));
    }

    /** Null where there is no such pattern, as for the next one. */
    ChartData pattern() {
        LoadPattern pattern = evaluation.pattern();
        if (pattern == null) {
            return null;
        }
        LoadStep asked = evaluation.input().rail().loadStep();
        LoadCourse course = pattern.worst().course();
        double[] whole = {0, course.endS()};
        return new ChartData("The load that does worst between the same two currents and within the same slew", Axis.TIME, Axis.linear("Load", "A"),
                List.of(Series.of("pattern", "load", "bank", course.timeS(), course.loadA()),
                        Series.of("least", "least", "reference", whole, new double[] {least(asked), least(asked)}),
                        Series.of("most", "most", "reference", whole, new double[] {most(asked), most(asked)})),
                List.of(new Mark(pattern.worst().deviationAtS(), "full effect")), List.of());
    }

    ChartData underPattern() {
        LoadPattern pattern = evaluation.pattern();
        if (pattern == null) {
            return null;
        }
        List<Series> series = new ArrayList<>();
        if (pattern.limited() != null) {
            series.add(Series.of("pattern-limited", "with duty limits", "reference", pattern.limited().timeS(),
                    shifted(pattern.limited().deviationV(), pattern.beginsV())));
        }
        double[] timeS = pattern.linear().timeS();
        series.add(Series.of("pattern-step", "one step alone", "reference", new double[] {0, timeS[timeS.length - 1]},
                new double[] {-pattern.worst().singleStepV(), -pattern.worst().singleStepV()}));
        series.add(Series.of("pattern", "deviation", "bank", timeS, shifted(pattern.linear().deviationV(), pattern.beginsV())));
        series.addAll(allowed(timeS[timeS.length - 1]));
        return new ChartData("Deviation of the output under that load, without duty limits and with them", Axis.TIME, Axis.linear("Deviation", "V"), series,
                List.of(new Mark(pattern.worst().deviationAtS(), "full effect")), List.of()).at(atLoad());
    }

    private static double[] shifted(double[] values, double by) {
        return by == 0 ? values : Arrays.stream(values).map(value -> value + by).toArray();
    }

    private static double least(LoadStep step) {
        return Math.min(step.fromA(), step.toA());
    }

    private static double most(LoadStep step) {
        return Math.max(step.fromA(), step.toA());
    }

    private List<Series> allowed(double untilS) {
        double allowedV = evaluation.input().rail().loadStep().allowedDeviationV();
        double[] whole = {0, untilS};
        return List.of(Series.of("allowed-below", "allowed", "limit", whole, new double[] {-allowedV, -allowedV}),
                Series.of("allowed-above", "allowed", "limit", whole, new double[] {allowedV, allowedV}));
    }

    /** Null where the loop cannot be had, as for the next two. */
    ChartData gain() {
        LoopResult loop = evaluation.loop();
        return loop == null ? null : new ChartData("Gain of the loop", Axis.FREQUENCY, Axis.linear("|T|", "dB"),
                List.of(averaged("loop gain", loop, loop.gainDb())), marks(), bands()).at(sensed());
    }

    ChartData phase() {
        LoopResult loop = evaluation.loop();
        return loop == null ? null : new ChartData("Phase of the loop", Axis.FREQUENCY, Axis.linear("Phase of T", "\u00b0"),
                List.of(averaged("loop phase", loop, loop.phaseDeg())), marks(), bands()).at(sensed());
    }

    /** Up to the switching frequency: beyond half of it the averaged model says nothing, and its delay turns the phase without end. */
    private Series averaged(String label, LoopResult loop, double[] values) {
        int until = 0;
        while (until < values.length && loop.grid().hz(until) <= evaluation.frequencies().switchingHz()) {
            until++;
        }
        return Series.of("gain", label, "bank", Arrays.copyOf(loop.grid().toArray(), until), Arrays.copyOf(values, until));
    }

    /** Output impedance: the bank alone, with the inductor, with the loop closed. */
    ChartData sensitivity() {
        LoopResult loop = evaluation.loop();
        if (loop == null) {
            return null;
        }
        double[] hz = loop.grid().toArray();
        Curve bank = evaluation.curves().bank();
        List<Series> series = new ArrayList<>(List.of(
                Series.of("alone", "bank alone", "reference", bank.grid().toArray(), bank.magnitudes()),
                Series.of("open", "loop open", "branch", hz, loop.openImpedanceOhm()),
                Series.of("sensitivity", "loop closed", "bank", hz, loop.closedImpedanceOhm())));
        series.addAll(targetImpedance(hz));
        return new ChartData("Output impedance with the loop closed, beside the bank alone and the bank with its inductor, under the target impedance"
                + " of the load step", Axis.FREQUENCY, Axis.log("|Z|", "\u03a9"), series, marks(), bands()).at(atLoad());
    }

    /** The mask that the load step and its allowed deviation make; none where no step is asked. */
    private List<Series> targetImpedance(double[] hz) {
        LoadStep asked = evaluation.input().rail().loadStep();
        if (asked == null) {
            return List.of();
        }
        TargetImpedance target = TargetImpedance.of(asked.allowedDeviationV(), Math.abs(asked.toA() - asked.fromA()), asked.slewAPerS());
        return List.of(Series.of("target-impedance", "target impedance", "limit", hz, Arrays.stream(hz).map(target::limitOhm).toArray()));
    }

    private static Series wave(String key, String label, String role, Waveform wave) {
        return Series.of(key, label, role, wave.timesS(), wave.voltagesV());
    }

    private ChartData overFrequency(
            String summary, Axis y, ToDoubleBiFunction<Curve, Integer> value, List<Point> points, List<Series> limits) {
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
        series.addAll(limits);
        return new ChartData(summary, Axis.FREQUENCY, y, series, marks(), bands(), points, List.of()).at(atLoad());
    }

    /** The mask of the quiet band, from harmonic to harmonic. */
    private List<Series> quietLimit() {
        List<QuietHarmonic> harmonics = evaluation.quiet();
        return harmonics.size() < 2 ? List.of() : List.of(Series.of("quiet-limit", "quiet limit", "limit",
                harmonics.stream().mapToDouble(QuietHarmonic::frequencyHz).toArray(),
                harmonics.stream().mapToDouble(QuietHarmonic::limitOhm).toArray()));
    }

    private Series branch(int k, Curve curve, ToDoubleBiFunction<Curve, Integer> value) {
        BranchInput branch = evaluation.input().branches().get(k);
        ValidRange valid = branch.part().asModelled().validRange();
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
