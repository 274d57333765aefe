package org.stillrail.electrical.converter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.LosslessResonanceException;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Loop gain, margins and stability against closed forms. */
class LoopTest {

    private static final FrequencyGrid GRID = FrequencyGrid.logSpaced(10, 10e6, 601);
    private static final Source SECOND_ORDER =
            Source.fromMemory("R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, ch. 9; closed form recomputed");
    private static final Source WRITTEN_OUT =
            Source.independent("T written out with numpy on 2 000 001 frequencies, phase unwrapped from 1 Hz, crossings by Brent's method");

    /** Far below the crossover the output falls by the load line and nothing else; a compensator placed with it makes its crossover. */
    @Test
    void aLoadLineIsTheImpedanceAtLowFrequency() {
        Converter converter = buck(new Compensator(3e4, List.of(6e3), List.of(250e3)), 500e-9).withLoadLineOhm(2e-3);
        LoopResult loop = Loop.of(bank(), converter, FrequencyGrid.logSpaced(0.1, 1e6, 201));
        Check.that(Topic.LOOP, "Closed-loop output impedance at 0.1 Hz with a load line of 2 mohm").source(Source.fromMemory("definition of a load line"))
                .expected("ohm", 2e-3).relative(1e-3).got(loop.closedImpedanceOhm()[0]);
        Compensator placed = CompensatorDesign.place(bank(), converter.stage(), converter.control(), new LoopTarget(40e3, 60), 2e-3);
        LoopResult wished = Loop.of(bank(), new Converter(converter.stage(), converter.control(), placed).withLoadLineOhm(2e-3), GRID);
        assertEquals(40e3, wished.crossoverHz(), 1);
        assertEquals(60, wished.phaseMarginDeg(), 1e-6);
    }

    @Test
    void aSinglePoleAfterTheIntegratorHasTheTextbooksPhaseMargin() {
        // Row LP-02: T = 1 / (s/w0 (1 + s/w2)), Q = sqrt(w0/w2).
        double[] q = {0.5, 0.75, 1, 2};
        double[] marginDeg = {76.34541525402449, 63.316220618803435, 51.82729237298775, 28.020176119334835};
        for (int i = 0; i < q.length; i++) {
            LoopResult loop = Loop.of(capacitor(), singlePole(q[i]), GRID);
            Check.that(Topic.LOOP, "Integrator and one pole, Q " + q[i] + ": phase margin").source(SECOND_ORDER).expected("deg", marginDeg[i])
                    .absolute(1e-4).got(loop.phaseMarginDeg());
            double tangent = Math.sqrt(Math.sqrt(0.25 + Math.pow(q[i], 4)) - 0.5);
            Check.that(Topic.LOOP, "Integrator and one pole at 20 kHz, Q " + q[i] + ": crossover").source(SECOND_ORDER)
                    .expected("Hz", SECOND_POLE_HZ * tangent).relative(1e-5).got(loop.crossoverHz());
            assertTrue(loop.stable());
            assertNull(loop.gainMarginDb());
        }
    }

    @Test
    void theSameInTermsOfTheDampingRatio() {
        // Row LP-03
        double[] zeta = {0.2, 0.3, 0.5, 0.6, 0.70710678};
        double[] marginDeg = {22.602284115272703, 33.272490961303106, 51.827292372987756, 59.18726681354997, 65.53019941742001};
        for (int i = 0; i < zeta.length; i++) {
            Check.that(Topic.LOOP, "Integrator and one pole, damping ratio " + zeta[i] + ": phase margin")
                    .source(Source.fromMemory("control textbooks, closed form")).expected("deg", marginDeg[i]).absolute(1e-4)
                    .got(Loop.of(capacitor(), singlePole(1 / (2 * zeta[i])), GRID).phaseMarginDeg());
        }
    }

    @Test
    void figuresOfAnIndependentComputation() {
        LoopResult voltage = Loop.of(bank(), buck(new Compensator(3e4, List.of(6e3), List.of(250e3)), 500e-9), GRID);
        figures("Voltage mode with delay", voltage, 36187.0578210318, 19.62487340285236, 17.33412557, 2.936775781284424, 0.006390973431537281, true);
        LoopResult fast = Loop.of(bank(), buck(new Compensator(3e4, List.of(6e3, 8e3), List.of(250e3, 400e3)), 500e-9), GRID);
        figures("Voltage mode with two zeros, unstable", fast, 323355.824371393, -23.657193527432412, 34.6441025, 3.874683566676228, 0.0033415339507726215, false);
        LoopResult current = Loop.of(bank(),
                new Converter(stage(), new CurrentMode(5e-3, 10e6), new Compensator(2e4, List.of(5e3), List.of(200e3))), GRID);
        figures("Peak current mode", current, 55934.294582612376, 90.33699395442288, 11.4638824, 1.5092040814511785, 0.0063703641744751625, true);
        Check.that(Topic.LOOP, "Real part of the bank's impedance at the switching frequency").source(WRITTEN_OUT)
                .expected("ohm", 0.0015021797751613207).absolute(1e-12).got(current.esrAtSwitchingOhm());
    }

    private static void figures(String name, LoopResult loop, double crossoverHz, double marginDeg, double gainMarginDb, double peak, double esr,
            boolean stable) {
        Check.that(Topic.LOOP, name + ": crossover").source(WRITTEN_OUT).expected("Hz", crossoverHz).relative(1e-9).got(loop.crossoverHz());
        Check.that(Topic.LOOP, name + ": phase margin").source(WRITTEN_OUT).expected("deg", marginDeg).absolute(1e-6).got(loop.phaseMarginDeg());
        Check.that(Topic.LOOP, name + ": gain margin").source(WRITTEN_OUT).expected("dB", gainMarginDb).absolute(1e-3).got(loop.gainMarginDb());
        Check.that(Topic.LOOP, name + ": peak of 1 / |1 + T| on the grid").source(WRITTEN_OUT).expected("", peak).absolute(1e-9)
                .got(loop.sensitivityPeak());
        Check.that(Topic.LOOP, name + ": Re Z of the bank at the crossover").source(WRITTEN_OUT).expected("ohm", esr).absolute(1e-12)
                .got(loop.esrAtCrossoverOhm());
        assertEquals(stable, loop.stable());
    }

    @Test
    void atTheCrossoverTheLoopScalesTheImpedanceByTheMarginAlone() {
        // Row LP-04
        Converter converter = buck(new Compensator(3e4, List.of(6e3), List.of(250e3)), 0);
        LoopResult whole = Loop.of(bank(), converter, GRID);
        LoopResult there = Loop.of(bank(), converter, FrequencyGrid.of(whole.crossoverHz() * 0.999999, whole.crossoverHz(), whole.crossoverHz() * 1.000001));
        double factor = 1 / (2 * Math.sin(Math.toRadians(whole.phaseMarginDeg() / 2)));
        Check.that(Topic.LOOP, "Closed over open output impedance at the crossover: 1 / (2 sin(PM / 2))")
                .source(Source.fromMemory("geometry of 1 + T where |T| = 1")).expected("", factor).relative(1e-6)
                .got(there.closedImpedanceOhm()[1] / there.openImpedanceOhm()[1]);
        assertEquals(whole.phaseMarginDeg(), there.phaseMarginDeg(), 1e-9);
    }

    @Test
    void phaseStartsAtMinusNinetyAndNeedsNoUnwrappingFromWhereTheGridStarts() {
        Converter converter = buck(new Compensator(3e4, List.of(6e3, 8e3), List.of(250e3, 400e3)), 600e-9);
        LoopResult whole = Loop.of(bank(), converter, FrequencyGrid.logSpaced(1e-2, 30e6, 9001));
        double[] phaseDeg = whole.phaseDeg();
        assertEquals(-90, phaseDeg[0], 1e-3);
        for (int i = 1; i < phaseDeg.length; i++) {
            assertTrue(Math.abs(phaseDeg[i] - phaseDeg[i - 1]) < 40, "step at " + whole.grid().hz(i));
        }
        assertTrue(phaseDeg[9000] < -5000);
        LoopResult high = Loop.of(bank(), converter, FrequencyGrid.logSpaced(20e6, 30e6, 3));
        assertEquals(phaseDeg[9000], high.phaseDeg()[2], 1e-6);
    }

    @Test
    void currentModeStartsAtMinusOneEighty() {
        PowerStage stage = stage();
        Converter converter = new Converter(stage, new CurrentMode(5e-3, 10e6), new Compensator(2e4, List.of(5e3), List.of(200e3)));
        LoopResult loop = Loop.of(bank(), converter, FrequencyGrid.logSpaced(1e-2, 1e6, 2001));
        assertEquals(-180, loop.phaseDeg()[0], 1e-3);
        // C / senseOhm * Z * H written out at one frequency
        int i = 1400;
        double w = loop.grid().omega(i);
        double wn = Math.PI * 500e3;
        double mc = 1 + 10e6 / (10.8 / 0.33e-6);
        double qn = 1 / (Math.PI * (mc * 0.9 - 0.5));
        double h = 1 / Math.hypot(1 - w * w / wn / wn, w / wn / qn);
        double c = 2e4 / w * Math.hypot(1, loop.grid().hz(i) / 5e3) / Math.hypot(1, loop.grid().hz(i) / 200e3);
        double z = bank().on(loop.grid()).bank().magnitude(i);
        Check.that(Topic.LOOP, "Peak current mode: |T| at one frequency, C / Rs |Z| |H| with the sampling effect")
                .source(Source.fromMemory("sampled-data model of peak current mode, R. B. Ridley 1991")).expected("dB", 20 * Math.log10(c / 5e-3 * z * h))
                .absolute(1e-9).got(loop.gainDb()[i]);
        assertEquals(loop.openImpedanceOhm()[i], z, 1e-12);
    }

    @Test
    void tooLittleSlopeCompensationIsUnstableButAnswered() {
        PowerStage half = new PowerStage(2, 1.2, 0.33e-6, 0, 500e3, 1);
        // mc D' = 0.4 without a ramp; exactly 0.5 with 0.25 of the rise
        for (double slope : new double[] {0, 0.25 * 0.8 / 0.33e-6}) {
            LoopResult loop = Loop.of(bank(), new Converter(half, new CurrentMode(5e-3, slope), new Compensator(2e4, List.of(), List.of())), GRID);
            assertFalse(loop.stable());
            for (double value : loop.gainDb()) {
                assertTrue(Double.isFinite(value));
            }
            assertTrue(Double.isFinite(loop.sensitivityPeak()));
        }
        LoopResult enough = Loop.of(bank(), new Converter(half, new CurrentMode(5e-3, 0.8 / 0.33e-6), new Compensator(2e4, List.of(5e3), List.of(200e3))), GRID);
        assertTrue(enough.stable());
    }

    @Test
    void gainMarginIsReadWhereThePhasePassesMinusOneEighty() {
        // T = k exp(-s d) / s (an integrator on a plant that is flat far below its resonance): phase -180 at f = 1 / (4 d), |T| = k / w there.
        Bank tiny = new Bank(List.of(new Branch("c", 1, new SeriesRlc(1e-15, 0, 0), SeriesPath.NONE, SeriesPath.NONE)));
        PowerStage stage = new PowerStage(12, 1.2, 1e-12, 0, 500e3, 1);
        double delayS = 1e-6;
        double k = 2 * Math.PI * 50e3;
        Converter converter = new Converter(stage, new VoltageMode(12, delayS), new Compensator(k, List.of(), List.of()));
        LoopResult loop = Loop.of(tiny, converter, FrequencyGrid.logSpaced(1e3, 1e6, 201));
        Source integrator = Source.fromMemory("control textbooks: k exp(-s d) / s");
        Check.that(Topic.LOOP, "Integrator with a delay of 1 us: crossover").source(integrator).expected("Hz", 50e3).absolute(1e-3).got(loop.crossoverHz());
        Check.that(Topic.LOOP, "Integrator with a delay of 1 us: phase margin, 90 - 360 f d").source(integrator)
                .expected("deg", 90 - 360 * 50e3 * delayS).absolute(1e-6).got(loop.phaseMarginDeg());
        Check.that(Topic.LOOP, "Integrator with a delay of 1 us: gain margin, read at 1 / (4 d)").source(integrator)
                .expected("dB", 20 * Math.log10(250e3 / 50e3)).absolute(1e-6).got(loop.gainMarginDb());
        assertTrue(loop.stable());
        // Five times the gain is the limit.
        assertTrue(Loop.of(tiny, scaled(converter, 4.99), GRID).stable());
        assertFalse(Loop.of(tiny, scaled(converter, 5.01), GRID).stable());
    }

    @Test
    void aLoopThatDipsBelowMinusOneEightyWithGainIsStableAndWarned() {
        Converter converter = buck(new Compensator(5.6e5, List.of(30e3, 30e3), List.of(3e6, 3e6)), 0);
        Bank lowLoss = new Bank(List.of(new Branch("c", 1, new SeriesRlc(300e-6, 0.1e-3, 0), SeriesPath.NONE, SeriesPath.NONE)));
        LoopResult loop = Loop.of(lowLoss, converter, GRID);
        assertTrue(loop.stable());
        assertTrue(loop.warnings().stream().anyMatch(warning -> warning.contains("passes -180 deg")));
        LoopResult less = Loop.of(lowLoss, scaled(converter, 0.01), GRID);
        assertFalse(less.stable());
    }

    @Test
    void noCrossingInTheGridIsSaid() {
        LoopResult loop = Loop.of(bank(), buck(new Compensator(3e4, List.of(6e3), List.of(250e3)), 0), FrequencyGrid.logSpaced(1e6, 10e6, 11));
        assertNull(loop.crossoverHz());
        assertNull(loop.phaseMarginDeg());
        assertNull(loop.esrAtCrossoverOhm());
        assertNotNull(loop.esrAtSwitchingOhm());
        assertTrue(loop.warnings().get(0).contains("does not cross 1"));
    }

    @Test
    void aSharpResonanceBetweenTwoGridPointsIsStillCrossed() {
        // The lossless output filter rises above 1 only within some hertz of its resonance.
        Bank c = new Bank(List.of(new Branch("c", 1, new SeriesRlc(100e-6, 1e-6, 0), SeriesPath.NONE, SeriesPath.NONE)));
        PowerStage stage = new PowerStage(12, 1.2, 1e-6, 0, 500e3, 1);
        Converter converter = new Converter(stage, new VoltageMode(1.2, 0), new Compensator(200, List.of(), List.of()));
        LoopResult loop = Loop.of(c, converter, FrequencyGrid.of(1e3, 1e4, 1e5));
        assertEquals(1 / (2 * Math.PI * Math.sqrt(1e-10)), loop.crossoverHz(), 200);
        assertTrue(loop.phaseMarginDeg() < 0);
        assertFalse(loop.stable());
    }

    @Test
    void phasesShareInductanceAndResistance() {
        Compensator compensator = new Compensator(3e4, List.of(6e3), List.of(250e3));
        LoopResult four = Loop.of(bank(), new Converter(new PowerStage(12, 1.2, 1.32e-6, 4e-3, 500e3, 4), new VoltageMode(1.5, 0), compensator), GRID);
        LoopResult one = Loop.of(bank(), new Converter(new PowerStage(12, 1.2, 0.33e-6, 1e-3, 500e3, 1), new VoltageMode(1.5, 0), compensator), GRID);
        assertEquals(one.crossoverHz(), four.crossoverHz(), 1e-9 * one.crossoverHz());
    }

    @Test
    void aLosslessResonanceOnAGridPointIsNamed() {
        Bank c = new Bank(List.of(new Branch("c", 1, new SeriesRlc(1, 0, 0), SeriesPath.NONE, SeriesPath.NONE)));
        Converter converter = new Converter(new PowerStage(12, 1.2, 1, 0, 500e3, 1), new VoltageMode(1.2, 0), new Compensator(200, List.of(), List.of()));
        double hz = 1 / (2 * Math.PI);
        assertThrows(LosslessResonanceException.class, () -> Loop.of(c, converter, FrequencyGrid.of(hz / 2, hz, 1)));
    }

    private static final double SECOND_POLE_HZ = 20e3;

    /** Inductor of next to nothing with a resistance: with the capacitor it is the pole at {@link #SECOND_POLE_HZ}. */
    private static Converter singlePole(double q) {
        double resistance = 1 / (2 * Math.PI * SECOND_POLE_HZ * 100e-6);
        PowerStage stage = new PowerStage(12, 1.2, 1e-15, resistance, 500e3, 1);
        return new Converter(stage, new VoltageMode(12, 0), new Compensator(q * q * 2 * Math.PI * SECOND_POLE_HZ, List.of(), List.of()));
    }

    private static Bank capacitor() {
        return new Bank(List.of(new Branch("c", 1, new SeriesRlc(100e-6, 0, 0), SeriesPath.NONE, SeriesPath.NONE)));
    }

    private static Bank bank() {
        return new Bank(List.of(new Branch("bulk", 1, new SeriesRlc(470e-6, 9e-3, 3e-9), SeriesPath.NONE, SeriesPath.NONE),
                new Branch("ceramic", 4, new SeriesRlc(22e-6, 3e-3, 1e-9), SeriesPath.NONE, SeriesPath.NONE)));
    }

    private static PowerStage stage() {
        return new PowerStage(12, 1.2, 0.33e-6, 1e-3, 500e3, 1);
    }

    private static Converter buck(Compensator compensator, double delayS) {
        return new Converter(stage(), new VoltageMode(1.5, delayS), compensator);
    }

    private static Converter scaled(Converter converter, double factor) {
        Compensator compensator = converter.compensator();
        return new Converter(converter.stage(), converter.control(),
                new Compensator(compensator.gain() * factor, compensator.zerosHz(), compensator.polesHz()));
    }
}
