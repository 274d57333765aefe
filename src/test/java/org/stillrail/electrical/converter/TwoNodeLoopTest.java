package org.stillrail.electrical.converter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.bank.TwoNodePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.step.Load;
import org.stillrail.electrical.step.LoadStep;
import org.stillrail.electrical.step.StepRefusedException;
import org.stillrail.electrical.step.StepRequest;
import org.stillrail.electrical.step.StepResult;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** The loop of a bank at two nodes: the textbook's equation point by point, and stability as it shows in time. */
class TwoNodeLoopTest {

    private static final PowerStage STAGE = new PowerStage(12, 1.2, 0.33e-6, 1e-3, 500e3, 1);
    private static final Compensator COMPENSATOR = new Compensator(6e4, List.of(6e3), List.of(250e3));
    private static final FrequencyGrid GRID = FrequencyGrid.logSpaced(100, 5e6, 400);

    private static Bank bank(SeriesPath path, Node sense) {
        return new Bank(List.of(
                new Branch("bulk", 1, new SeriesRlc(470e-6, 9e-3, 3e-9), SeriesPath.NONE, SeriesPath.NONE, Node.CONVERTER),
                new Branch("ceramics", 4, new SeriesRlc(22e-6, 3e-3, 1e-9), SeriesPath.NONE, SeriesPath.NONE, Node.LOAD)),
                new Distance(path, sense, new SeriesRlc(1e-6, 1e-3, 0)));
    }

    /** {@code T = C Vin / Vramp Zs / (Zout + Zcc) e^-sd}, or {@code C / Rs Zs H}, with Zs = Zcc or Zcl. */
    @ParameterizedTest
    @EnumSource(Node.class)
    void loopGainIsThatOfTheEquation(Node sense) {
        Bank bank = bank(new SeriesPath(2e-3, 5e-9), sense);
        VoltageMode voltage = new VoltageMode(1.5, 1e-6);
        CurrentMode current = new CurrentMode(0.05, 1e6);
        LoopResult one = Loop.of(bank, new Converter(STAGE, voltage, COMPENSATOR), GRID);
        LoopResult two = Loop.of(bank, new Converter(STAGE, current, COMPENSATOR), GRID);
        for (int i = 0; i < GRID.size(); i++) {
            double omega = GRID.omega(i);
            TwoNodePoint nodes = bank.nodesAt(GRID.hz(i));
            Complex sensed = sense == Node.LOAD ? nodes.transfer() : nodes.atConverter();
            Complex inductor = new Complex(1e-3, omega * 0.33e-6);
            Complex c = new Complex(0, -6e4 / omega).times(new Complex(1, GRID.hz(i) / 6e3)).over(new Complex(1, GRID.hz(i) / 250e3));
            Complex delay = Complex.polar(1, -omega * 1e-6);
            same("Loop of a bank at two nodes, voltage mode, sensed at the " + sense.name().toLowerCase(Locale.ROOT), one, i, c.times(8).times(sensed).over(inductor.plus(nodes.atConverter())).times(delay));
            double wn = Math.PI * 500e3;
            double duty = 0.1;
            double slope = (12 - 1.2) / 0.33e-6;
            double inverseQ = Math.PI * ((1 + 1e6 / slope) * (1 - duty) - 0.5);
            Complex sampling = new Complex(1 - omega * omega / (wn * wn), omega / wn * inverseQ);
            same("Loop of a bank at two nodes, current mode, sensed at the " + sense.name().toLowerCase(Locale.ROOT), two, i, c.times(1 / 0.05).times(sensed).over(sampling));
        }
    }

    private static void same(String name, LoopResult loop, int i, Complex t) {
        Complex got = Complex.polar(Math.pow(10, loop.gainDb()[i] / 20), Math.toRadians(loop.phaseDeg()[i]));
        Check.that(Topic.LOOP, name + ": error of T over |T|").source(Source.fromMemory("textbook equation of the averaged loop, written out point by point"))
                .expected("the same complex T at 400 frequencies").absolute(1e-9).compare("", 0, got.minus(t).magnitude() / t.magnitude());
        assertThat(loop.sensitivity()[i]).isCloseTo(1 / Complex.ONE.plus(t).magnitude(), within(1e-8 * loop.sensitivity()[i]));
    }

    /** The phase runs on from -90 deg without a jump, wherever path and branches resonate. */
    @ParameterizedTest
    @EnumSource(Node.class)
    void phaseIsContinuous(Node sense) {
        LoopResult loop = Loop.of(bank(new SeriesPath(0.1e-3, 220e-9), sense), new Converter(STAGE, new VoltageMode(1.5, 0), COMPENSATOR),
                FrequencyGrid.logSpaced(1, 5e6, 20_000));
        assertThat(loop.phaseDeg()[0]).isCloseTo(-90, within(1.0));
        for (int i = 1; i < loop.phaseDeg().length; i++) {
            assertThat(Math.abs(loop.phaseDeg()[i] - loop.phaseDeg()[i - 1])).isLessThan(30);
        }
    }

    /** A path of almost nothing: margins, crossover and impedance of the bank at one node. */
    @Test
    void shortPathMakesOneNode() {
        Converter converter = new Converter(STAGE, new VoltageMode(1.5, 0), COMPENSATOR);
        for (Node sense : Node.values()) {
            Bank two = bank(new SeriesPath(1e-12, 1e-18), sense);
            Bank one = new Bank(List.of(two.branches().get(0), two.branches().get(1),
                    new Branch("chip", 1, new SeriesRlc(1e-6, 1e-3, 0), SeriesPath.NONE, SeriesPath.NONE)));
            LoopResult expected = Loop.of(one, converter, GRID);
            LoopResult got = Loop.of(two, converter, GRID);
            assertThat(got.crossoverHz()).isCloseTo(expected.crossoverHz(), within(1e-5 * expected.crossoverHz()));
            assertThat(got.phaseMarginDeg()).isCloseTo(expected.phaseMarginDeg(), within(1e-4));
            assertThat(got.stable()).isEqualTo(expected.stable());
            for (int i = 0; i < GRID.size(); i++) {
                assertThat(got.closedImpedanceOhm()[i]).isCloseTo(expected.closedImpedanceOhm()[i], within(1e-5 * expected.closedImpedanceOhm()[i]));
                assertThat(got.openImpedanceOhm()[i]).isCloseTo(expected.openImpedanceOhm()[i], within(1e-5 * expected.openImpedanceOhm()[i]));
            }
        }
    }

    /** What encirclements call unstable grows in time, and what they call stable settles. */
    @ParameterizedTest
    @CsvSource({"CONVERTER, 0.5e-3, 0.2e-9", "LOAD, 0.5e-3, 0.2e-9", "CONVERTER, 1e-3, 220e-9", "LOAD, 1e-3, 220e-9", "LOAD, 20e-3, 100e-9",
        "LOAD, 0.2e-3, 1e-6", "CONVERTER, 0.2e-3, 1e-6"})
    void encirclementsTellWhatTheStepDoes(Node sense, double r, double l) {
        Bank bank = bank(new SeriesPath(r, l), sense);
        Converter converter = new Converter(STAGE, new VoltageMode(1.5, 0), COMPENSATOR);
        LoopResult loop = Loop.of(bank, converter, GRID);
        Check.that(Topic.LOOP, "Stability by encirclements of a bank at two nodes, seven paths")
                .source(Source.independent("a small step solved in time: its slopes die away or grow")).expected("stable where the step settles")
                .compare("", settles(bank, converter) ? 1 : 0, loop.stable() ? 1 : 0);
    }

    @Test
    void secondStageInsideTheLoopUpsetsIt() {
        Converter converter = new Converter(STAGE, new VoltageMode(1.5, 0), COMPENSATOR);
        assertThat(Loop.of(bank(new SeriesPath(1e-3, 220e-9), Node.LOAD), converter, GRID).stable()).isFalse();
        assertThat(Loop.of(bank(new SeriesPath(1e-3, 220e-9), Node.CONVERTER), converter, GRID).stable()).isTrue();
    }

    private static boolean settles(Bank bank, Converter converter) {
        try {
            StepResult step = LoadStep.of(StepRequest.of(bank, converter, new Load(2, 3, 10e6), 3e-3).unlimited().withSamples(3000));
            double early = 0;
            double late = 0;
            for (int i = 0; i < 3000; i++) {
                double slope = i == 0 ? 0 : Math.abs(step.deviationV()[i] - step.deviationV()[i - 1]);
                early = i < 300 ? Math.max(early, slope) : early;
                late = i >= 2700 ? Math.max(late, slope) : late;
            }
            return late < early;
        } catch (StepRefusedException e) {
            return false;
        }
    }
}
