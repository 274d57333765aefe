package org.stillrail.electrical.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.CurrentMode;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.converter.VoltageMode;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Edge cases of the load step: extreme values, closed forms, settling, warnings, refusals. */
class LoadStepEdgesTest {

    private static final SeriesRlc BULK = new SeriesRlc(470e-6, 9e-3, 3e-9);
    private static final SeriesRlc CERAMIC = new SeriesRlc(88e-6, 0.8e-3, 0.25e-9);
    private static final PowerStage STAGE = new PowerStage(12, 1.2, 0.33e-6, 1e-3, 500e3, 1);
    private static final Converter CONVERTER = new Converter(STAGE, new VoltageMode(1.5, 0), new Compensator(6e4, List.of(6e3), List.of(250e3)));

    @Test
    void aSecondOrderLoopOvershootsByTheTextbooksFormula() {
        // LP-02 and LP-03: with T = 1 / (s/w0 (1 + s/w2)) the deviation of an R-C node is the impulse response of
        // T / (1 + T), so its running integral is the step response: overshoot exp(-pi / sqrt(4 Q^2 - 1)).
        double[] q = {0.75, 1, 2, 2.5};
        for (double qualityFactor : q) {
            double w2 = 2 * Math.PI * 20e3;
            double resistance = 1 / (w2 * 100e-6);
            PowerStage stage = new PowerStage(12, 1.2, 1e-15, resistance, 500e3, 1);
            Converter converter = new Converter(stage, new VoltageMode(12, 0), new Compensator(qualityFactor * qualityFactor * w2, List.of(), List.of()));
            StepRequest request = StepRequest.of(bank(new SeriesRlc(100e-6, 0, 0)), converter, new Load(0, 1, 1e12), 400e-6).unlimited().withSamples(20001);
            StepResult got = LoadStep.of(request);
            double[] timeS = got.timeS();
            double[] deviationV = got.deviationV();
            double integral = 0;
            double lowest = 0;
            for (int i = 1; i < timeS.length; i++) {
                integral += (deviationV[i] + deviationV[i - 1]) / 2 * (timeS[i] - timeS[i - 1]);
                lowest = Math.min(lowest, integral);
            }
            double settled = -resistance / (qualityFactor * qualityFactor * w2);
            double expected = Math.exp(-Math.PI / Math.sqrt(4 * qualityFactor * qualityFactor - 1));
            Check.that(Topic.STEP, "Second-order closed loop, Q " + qualityFactor + ": overshoot exp(-pi / sqrt(4 Q^2 - 1)) of the integrated response")
                    .source(Source.fromMemory("R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, ch. 9"))
                    .expected("", expected).absolute(1e-4).got(lowest / settled - 1);
        }
    }

    @Test
    void theBankAloneIsAClosedForm() {
        // R dI + dI (t - ramp / 2) / C after the ramp
        Load load = new Load(2, 7, 1e6);
        StepResult got = LoadStep.of(StepRequest.of(bank(new SeriesRlc(100e-6, 5e-3, 0)), null, load, 50e-6));
        Check.that(Topic.STEP, "Bank alone under a ramp of 5 A: R dI + dI (t - ramp / 2) / C").source(Source.fromMemory("circuit theory"))
                .expected("V", 5e-3 * 5 + 5 * (50e-6 - 2.5e-6) / 100e-6).absolute(1e-12).got(got.undershootV());
        assertEquals(50e-6, got.undershootAtS(), 1e-12);
        assertEquals(2, got.inductorA()[500], 0);
        assertTrue(got.warnings().get(0).contains("grows with durationS"));
        assertEquals(0, got.overshootV(), 0);
    }

    @Test
    void bothSidesOfAJumpCount() {
        // A lone inductive branch jumps down by L slew at the start and up by as much at the end of the ramp.
        Load load = new Load(0, 1, 1e9);
        StepResult got = LoadStep.of(StepRequest.of(bank(new SeriesRlc(1, 0, 1e-9)), null, load, 1e-6));
        Check.that(Topic.STEP, "Lone inductive branch of 1 nH at the end of a ramp of 1 A/ns: L k").source(Source.fromMemory("circuit theory"))
                .expected("V", 1).absolute(1e-8).got(got.undershootV());
        assertEquals(1e-9, got.undershootAtS(), 1e-15);
        assertEquals(0, got.deviationV()[0], 0);
        assertEquals(-1e-6, got.deviationV()[999], 1e-8);
    }

    @Test
    void extremeValuesStillGiveNumbers() {
        for (double slew : new double[] {1, 1e15, 1e30, 1e300}) {
            finite(StepRequest.of(bank(BULK, CERAMIC), CONVERTER, new Load(2, 12, slew), 200e-6));
            finite(StepRequest.of(bank(new SeriesRlc(100e-6, 5e-3, 0), CERAMIC), CONVERTER, new Load(2, 12, slew), 200e-6));
        }
        for (double durationS : new double[] {1e-15, 1e-12, 1, 1e6}) {
            finite(StepRequest.of(bank(BULK, CERAMIC), CONVERTER, new Load(2, 12, 1e7), durationS));
        }
        for (double delayS : new double[] {1e-15, 1e-12, 1e-9, 1e-6, 1}) {
            Converter delayed = new Converter(STAGE, new VoltageMode(1.5, delayS), CONVERTER.compensator());
            finite(StepRequest.of(bank(BULK, CERAMIC), delayed, new Load(2, 12, 1e7), 200e-6));
        }
        SeriesRlc[] odd = {new SeriesRlc(47e-6, 0, 0), new SeriesRlc(100e-6, 1e-9, 0), new SeriesRlc(100e-6, 1e-3, 1e-15), new SeriesRlc(10e-6, 0, 1e-9),
            new SeriesRlc(1e-15, 1e6, 0), new SeriesRlc(1, 0, 0)};
        for (SeriesRlc a : odd) {
            for (SeriesRlc b : odd) {
                finite(StepRequest.of(bank(BULK, a, b), CONVERTER, new Load(2, 12, 1e7), 200e-6));
            }
        }
    }

    @Test
    void aFineCapacitanceInParallelTendsToNone() {
        double without = LoadStep.of(StepRequest.of(bank(BULK), CONVERTER, new Load(2, 12, 1e7), 200e-6)).overshootV();
        double with = LoadStep.of(StepRequest.of(bank(BULK, new SeriesRlc(1e-14, 50, 0)), CONVERTER, new Load(2, 12, 1e7), 200e-6)).overshootV();
        assertEquals(without, with, 1e-5 * without);
    }

    @Test
    void settlingIsTheLastEntryIntoTheBand() {
        StepRequest request = StepRequest.of(bank(BULK, CERAMIC), CONVERTER, new Load(2, 12, 1e7), 200e-6).withSamples(20001);
        assertNull(LoadStep.of(request).settledAtS());
        StepResult got = LoadStep.of(request.withSettleBandV(0.01));
        double last = 0;
        double[] timeS = got.timeS();
        double[] deviationV = got.deviationV();
        for (int i = 0; i < timeS.length; i++) {
            last = Math.abs(deviationV[i]) > 0.01 ? timeS[i] : last;
        }
        assertEquals(last, got.settledAtS(), 1e-8);
        assertEquals(0, LoadStep.of(request.withSettleBandV(1.0)).settledAtS(), 0);
        StepRequest brief = StepRequest.of(bank(BULK, CERAMIC), CONVERTER, new Load(2, 12, 1e7), 3e-6);
        assertNull(LoadStep.of(brief.withSettleBandV(0.01)).settledAtS());
    }

    @Test
    void aLoadLineLeavesItsShareOfTheStep() {
        StepRequest request = StepRequest.of(bank(BULK, CERAMIC), CONVERTER.withLoadLineOhm(1e-3), new Load(2, 12, 1e7), 2e-3);
        StepResult got = LoadStep.of(request);
        Check.that(Topic.STEP, "Load line of 1 mohm under 10 A more: deviation once settled").source(Source.fromMemory("definition of a load line"))
                .expected("V", -10e-3).absolute(1e-6).got(got.deviationV()[999]);
        assertEquals(12, got.inductorA()[999], 1e-3);
    }

    @Test
    void anExtremumWithinOneSwitchingPeriodIsWarnedAbout() {
        PowerStage slow = new PowerStage(12, 1.2, 0.33e-6, 1e-3, 100e3, 1);
        Converter converter = new Converter(slow, CONVERTER.control(), CONVERTER.compensator());
        StepRequest request = StepRequest.of(bank(BULK, CERAMIC), converter, new Load(2, 12, 1e7), 200e-6);
        assertTrue(LoadStep.of(request).warnings().stream().anyMatch(warning -> warning.contains("undershoot") && warning.contains("switching period")));
        PowerStage fast = new PowerStage(12, 1.2, 0.33e-6, 1e-3, 5e6, 1);
        StepRequest seen = StepRequest.of(bank(BULK, CERAMIC), new Converter(fast, CONVERTER.control(), CONVERTER.compensator()), new Load(2, 12, 1e7), 200e-6);
        assertEquals(List.of(), LoadStep.of(seen).warnings());
    }

    @Test
    void noSteadyStateIsRefusedOnlyWithLimits() {
        Load impossible = new Load(20_000, 0, 1e7);
        StepRequest request = StepRequest.of(bank(BULK), CONVERTER, impossible, 1e-6);
        StepRefusedException refused = assertThrows(StepRefusedException.class, () -> LoadStep.of(request));
        assertTrue(refused.getMessage().contains("load.fromA"));
        LoadStep.of(request.unlimited());
    }

    @Test
    void aRunawayIsRefusedAndARingingWithoutEndStopsAtTheBudget() {
        Converter unstable = new Converter(STAGE, new VoltageMode(1.5, 2e-6), new Compensator(2e6, List.of(6e3), List.of(250e3)));
        assertThrows(StepRefusedException.class, () -> LoadStep.of(StepRequest.of(bank(BULK, CERAMIC), unstable, new Load(2, 12, 1e7), 2e-3).unlimited()));
        StepRequest ringing = StepRequest.of(bank(BULK, new SeriesRlc(1e-15, 0, 0)), CONVERTER, new Load(2, 12, 1e7), 200e-6);
        assertThrows(StepBudgetException.class, () -> LoadStep.of(ringing));
    }

    @Test
    void subharmonicCurrentModeStaysBoundedWithinItsLimits() {
        PowerStage highDuty = new PowerStage(2, 1.2, 0.33e-6, 1e-3, 500e3, 1);
        Converter converter = new Converter(highDuty, new CurrentMode(5e-3, 0), new Compensator(2e4, List.of(5e3), List.of(200e3)));
        StepResult got = LoadStep.of(StepRequest.of(bank(BULK, CERAMIC), converter, new Load(2, 12, 1e7), 200e-6));
        assertTrue(got.undershootV() < 0.5 && got.overshootV() < 0.5);
    }

    @Test
    void anotherModelIsReplacedAroundTheCrossoverAndSaysSo() {
        ImpedanceModel disguised = new Disguised(CERAMIC);
        StepResult exact = LoadStep.of(StepRequest.of(bank(BULK, CERAMIC), CONVERTER, new Load(2, 12, 1e7), 200e-6));
        StepResult got = LoadStep.of(StepRequest.of(bank(BULK, disguised), CONVERTER, new Load(2, 12, 1e7), 200e-6));
        assertEquals(exact.undershootV(), got.undershootV(), 1e-6 * exact.undershootV());
        assertNull(exact.fitErrorPercent());
        assertNotNull(got.fitErrorPercent());
        assertEquals(0, got.fitErrorPercent(), 1e-6);
        assertTrue(got.warnings().stream().anyMatch(warning -> warning.contains("equivalent around")));
    }

    /** A series R-L-C that does not show what it is. */
    private record Disguised(SeriesRlc inner) implements ImpedanceModel {
        @Override
        public void addImpedanceTo(FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm) {
            inner.addImpedanceTo(grid, resistanceOhm, reactanceOhm);
        }

        @Override
        public ImpedancePoint at(double hz) {
            return inner.at(hz);
        }

        @Override
        public double inductanceAtInfinityH() {
            return inner.inductanceAtInfinityH();
        }
    }

    private static void finite(StepRequest request) {
        StepResult got = LoadStep.of(request);
        for (double v : got.deviationV()) {
            assertTrue(Double.isFinite(v));
        }
        assertTrue(Double.isFinite(got.undershootV()) && Double.isFinite(got.overshootV()));
    }

    private static Bank bank(ImpedanceModel... parts) {
        return new Bank(Arrays.stream(parts).map(part -> new Branch("c", 1, part, SeriesPath.NONE, SeriesPath.NONE)).toList());
    }
}
