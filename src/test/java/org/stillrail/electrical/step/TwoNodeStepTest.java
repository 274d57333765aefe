package org.stillrail.electrical.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.converter.VoltageMode;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** A load step at the load's node: an independent integration of the whole circuit, and limits known by hand. */
class TwoNodeStepTest {

    private static final SeriesPath PLANE = new SeriesPath(1e-3, 2e-9);

    private static Branch at(Node node, double c, double r, double l) {
        return new Branch("b", 1, new SeriesRlc(c, r, l), SeriesPath.NONE, SeriesPath.NONE, node);
    }

    /** Every kind of node beside every other, sensed at either, linear and with duty limits: within 0.5 % and 1 %. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, CONVERTER, false", "0, 0, LOAD, false", "0, 0.25, LOAD, false", "0, 0.25, CONVERTER, false",
        "3, 0, LOAD, false", "3, 0.25, LOAD, false", "3, 0.25, CONVERTER, false", "3, 0.25, LOAD, true", "0, 0, CONVERTER, true"})
    void followsTheIndependentIntegration(double nearNh, double farNh, Node sense, boolean limited) {
        List<Branch> branches = List.of(at(Node.CONVERTER, 470e-6, 9e-3, nearNh * 1e-9), at(Node.CONVERTER, 330e-6, 12e-3, 4e-9),
                at(Node.LOAD, 88e-6, 0.8e-3, farNh * 1e-9), at(Node.LOAD, 22e-6, 3e-3, 0.6e-9));
        double fromA = limited ? 30 : 2;
        double toA = limited ? 1 : 12;
        TwoNodeReference reference = new TwoNodeReference(
                branches, PLANE, sense, 12, 1.2, 0.33e-6, 1e-3, 1.5, 6e4, 6e3, 250e3, fromA, toA, 20e6, limited);
        List<double[]> expected = reference.run(100e-6);
        StepResult got = LoadStep.of(new StepRequest(new Bank(branches, new Distance(PLANE, sense, null)), converter(),
                new Load(fromA, toA, 20e6), 100e-6, limited, 800, null));
        double lowest = expected.stream().mapToDouble(point -> point[1]).min().orElseThrow();
        double highest = expected.stream().mapToDouble(point -> point[1]).max().orElseThrow();
        double scale = Math.max(-lowest, highest);
        double tolerance = limited ? 0.01 : 0.005;
        String name = "Step at the load of two nodes, %s, least L %s nH near and %s nH far, sensed at the %s"
                .formatted(limited ? "duty limits" : "linear", nearNh, farNh, sense.name().toLowerCase(Locale.ROOT));
        Source integration = Source.independent("whole circuit integrated by a Runge-Kutta of order 8 (Hipparchus, Dormand-Prince)");
        Check.that(Topic.MOUNTING, name + ": undershoot, overshoot").source(integration).expected("V", -lowest, Math.max(0, highest))
                .relativeToLargest(tolerance).got(got.undershootV(), got.overshootV());
        int k = 1;
        for (int i = 1; i < got.timeS().length; i++) {
            while (k < expected.size() - 1 && expected.get(k)[0] < got.timeS()[i]) {
                k++;
            }
            double[] a = expected.get(k - 1);
            double[] b = expected.get(k);
            double part = b[0] > a[0] ? (got.timeS()[i] - a[0]) / (b[0] - a[0]) : 1;
            Check.that(Topic.MOUNTING, name + ": error of the waveforms over the extremum and over the step").source(integration)
                    .expected("the same deviation and inductor current at every sample").absolute(tolerance)
                    .compare("", 0, Math.max(Math.abs(a[1] + part * (b[1] - a[1]) - got.deviationV()[i]) / scale,
                            Math.abs(a[2] + part * (b[2] - a[2]) - got.inductorA()[i]) / Math.abs(toA - fromA)));
        }
    }

    /** A path of almost nothing, inductive, resistive or both: the bank at one node. */
    @ParameterizedTest
    @CsvSource({"1e-9, 0", "0, 1e-15", "1e-9, 1e-15"})
    void shortPathMakesOneNode(double r, double l) {
        List<Branch> branches = List.of(at(Node.CONVERTER, 470e-6, 9e-3, 3e-9), at(Node.LOAD, 88e-6, 0.8e-3, 0.25e-9));
        Load load = new Load(2, 12, 10e6);
        StepResult one = LoadStep.of(StepRequest.of(new Bank(branches), converter(), load, 100e-6));
        for (Node sense : Node.values()) {
            StepResult two = LoadStep.of(StepRequest.of(new Bank(branches, new Distance(new SeriesPath(r, l), sense, null)), converter(), load, 100e-6));
            assertThat(two.undershootV()).isCloseTo(one.undershootV(), withPercentage(0.01));
            assertThat(two.overshootV()).isCloseTo(one.overshootV(), within(1e-4 * one.undershootV()));
        }
    }

    /** With nothing at the load its voltage is the converter's less the path's drop: R times the step stays where the converter is sensed. */
    @Test
    void emptyLoadNodeSeesThePath() {
        List<Branch> branches = List.of(at(Node.CONVERTER, 470e-6, 9e-3, 3e-9), at(Node.CONVERTER, 88e-6, 0.8e-3, 0.25e-9));
        Load load = new Load(2, 12, 10e6);
        StepResult one = LoadStep.of(StepRequest.of(new Bank(branches), converter(), load, 2e-3));
        StepResult held = LoadStep.of(StepRequest.of(new Bank(branches, new Distance(PLANE, Node.CONVERTER, null)), converter(), load, 2e-3));
        StepResult remote = LoadStep.of(StepRequest.of(new Bank(branches, new Distance(PLANE, Node.LOAD, null)), converter(), load, 2e-3));
        int last = one.deviationV().length - 1;
        for (int i = 1; i < last; i++) {
            double drop = 10 * 1e-3 * Math.min(1, one.timeS()[i] / 1e-6) + (one.timeS()[i] < 1e-6 ? 2e-9 * 10e6 : 0);
            assertEquals(one.deviationV()[i] - drop, held.deviationV()[i], 1e-6);
        }
        Check.that(Topic.MOUNTING, "Path of 1 mohm under 10 A more, sensed at the converter: deviation of the load once settled")
                .source(Source.fromMemory("Ohm's law")).expected("V", -10e-3).absolute(1e-5).got(held.deviationV()[last]);
        assertThat(remote.deviationV()[last]).isCloseTo(0, within(1e-5));
    }

    /**
     * 10 A in 10 us, far slower than the path of 2 mohm and 5 nH and the load's 10 uF: once the ramp is over and the ringing gone,
     * the load sees the resistance of bulk and path, and the charge taken from all capacitances together.
     */
    @Test
    void bankAloneIsSeenAtTheLoad() {
        List<Branch> branches = List.of(at(Node.CONVERTER, 1e-2, 0.005, 2e-9));
        Distance distance = new Distance(new SeriesPath(0.002, 5e-9), Node.LOAD, new SeriesRlc(1e-5, 0.01, 1e-9));
        StepResult step = LoadStep.of(new StepRequest(new Bank(branches, distance), null, new Load(0, 10, 1e6), 200e-6, false, 400, null));
        double expected = 10 * 0.007 + 10 * (200e-6 - 5e-6) / 1e-2;
        Check.that(Topic.MOUNTING, "Slow step at the load of two nodes: resistance of bulk and path, charge from all capacitances")
                .source(Source.independent("charge balance by hand")).expected("V", expected).relative(0.01).got(step.undershootV());
    }

    /** An ideal capacitance at the load, and everything at the load. */
    @Test
    void everyPlaceOfTheBranchesHasAnAnswer() {
        SeriesRlc chip = new SeriesRlc(2e-6, 0, 0);
        for (Node node : Node.values()) {
            for (SeriesRlc load : new SeriesRlc[] {null, chip, new SeriesRlc(1e-6, 1e-3, 1e-11)}) {
                List<Branch> branches = List.of(at(node, 470e-6, 9e-3, 3e-9), at(node, 88e-6, 0.8e-3, 0.25e-9));
                for (Node sense : Node.values()) {
                    StepResult step = LoadStep.of(StepRequest.of(new Bank(branches, new Distance(PLANE, sense, load)), converter(), new Load(2, 12, 10e6), 200e-6));
                    assertThat(step.undershootV()).isBetween(0.01, 0.2);
                }
            }
        }
    }

    private static Converter converter() {
        return new Converter(new PowerStage(12, 1.2, 0.33e-6, 1e-3, 500e3, 1), new VoltageMode(1.5, 0), new Compensator(6e4, List.of(6e3), List.of(250e3)));
    }
}
