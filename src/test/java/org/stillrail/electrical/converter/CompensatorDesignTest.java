package org.stillrail.electrical.converter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class CompensatorDesignTest {

    private static final FrequencyGrid GRID = FrequencyGrid.logSpaced(100, 250e3, 401);
    private static final PowerStage STAGE = new PowerStage(12, 1.2, 0.33e-6, 1e-3, 500e3, 1);

    @Test
    void crossoverAndMarginAreMetOnTheActualPlantWithItsDelay() {
        for (double esr : new double[] {9e-3, 1e-3, 0}) {
            for (double delayS : new double[] {0, 500e-9}) {
                Converter converter = Converter.designed(bank(esr), STAGE, new VoltageMode(1.5, delayS), new LoopTarget(50e3, 55));
                LoopResult loop = Loop.of(bank(esr), converter, GRID);
                assertEquals(50e3, loop.crossoverHz(), 1e-4);
                assertEquals(55, loop.phaseMarginDeg(), 1e-6);
                assertTrue(loop.stable());
            }
        }
    }

    @Test
    void currentModeNeedsOneZero() {
        CurrentMode control = new CurrentMode(5e-3, 10e6);
        Converter converter = Converter.designed(bank(2e-3), STAGE, control, new LoopTarget(50e3, 60));
        LoopResult loop = Loop.of(bank(2e-3), converter, GRID);
        assertEquals(50e3, loop.crossoverHz(), 1e-4);
        assertEquals(60, loop.phaseMarginDeg(), 1e-6);
        assertEquals(1, converter.compensator().zerosHz().size());
    }

    @Test
    void placementIsTheKFactors() {
        // Row LP-05
        Source venable = Source.fromMemory("H. D. Venable, The K factor, Powercon 10, 1983; arctangent identities recomputed");
        double[][] oneZero = {{30, 1.7320508075688767}, {45, 2.414213562373095}, {60, 3.7320508075688776}, {75, 7.5957541127251424}};
        double[][] twoZeros = {{90, 5.82842712474619}, {120, 13.928203230275512}, {150, 57.69548054098092}};
        double fc = 50e3;
        double plantPhase = new Plant(bank(20e-3), STAGE, new VoltageMode(1.5, 0), 0).at(fc).phaseDeg();
        for (double[] row : oneZero) {
            // Boost = margin - plant phase - 90; a delay makes the plant's phase what the boost needs.
            Compensator compensator = placed(row[0], plantPhase, fc);
            Check.that(Topic.LOOP, "K factor with one zero for a boost of " + row[0] + " deg: crossover over zero, pole over crossover")
                    .source(venable).expected("", row[1], row[1]).relative(1e-9)
                    .got(fc / compensator.zerosHz().get(0), compensator.polesHz().get(0) / fc);
        }
        for (double[] row : twoZeros) {
            Compensator compensator = placed(row[0], plantPhase, fc);
            assertEquals(2, compensator.zerosHz().size());
            Check.that(Topic.LOOP, "K factor with two zeros for a boost of " + row[0] + " deg: squares of crossover over zero, pole over crossover")
                    .source(venable).expected("", row[1], row[1]).relative(1e-9)
                    .got(Math.pow(fc / compensator.zerosHz().get(0), 2), Math.pow(compensator.polesHz().get(1) / fc, 2));
        }
    }

    @Test
    void anotherCrossingWithLessMarginIsSaid() {
        // Two lossless capacitors ring above the wanted crossover and lift |T| beyond 1 again.
        Bank ringing = new Bank(List.of(new Branch("a", 1, new SeriesRlc(500e-6, 0, 5e-9), SeriesPath.NONE, SeriesPath.NONE),
                new Branch("b", 1, new SeriesRlc(10e-6, 0, 1e-9), SeriesPath.NONE, SeriesPath.NONE)));
        Converter converter = Converter.designed(ringing, STAGE, new VoltageMode(1.5, 0), new LoopTarget(50e3, 55));
        LoopResult loop = Loop.of(ringing, converter, FrequencyGrid.logSpaced(100, 10e6, 101));
        assertTrue(loop.phaseMarginDeg() < 55);
        assertTrue(loop.warnings().stream().anyMatch(warning -> warning.contains("also crosses 1")), loop.warnings().toString());
        LoopResult alone = Loop.of(ringing, converter, GRID);
        assertEquals(50e3, alone.crossoverHz(), 1e-4);
        assertTrue(alone.warnings().stream().noneMatch(warning -> warning.contains("also crosses 1")));
    }

    @Test
    void whatCannotBeHadIsRefusedInWords() {
        assertRefused("boost", new VoltageMode(1.5, 4e-6), new LoopTarget(100e3, 80));
        assertRefused("half the switching", new VoltageMode(1.5, 0), new LoopTarget(250e3, 45));
        PowerStage highDuty = new PowerStage(2, 1.2, 0.33e-6, 1e-3, 500e3, 1);
        DesignRefusedException refused = assertThrows(DesignRefusedException.class,
                () -> CompensatorDesign.place(bank(1e-3), highDuty, new CurrentMode(5e-3, 0), new LoopTarget(20e3, 45), 0));
        assertTrue(refused.getMessage().contains("slope compensation"));
    }

    private static void assertRefused(String word, Control control, LoopTarget target) {
        DesignRefusedException refused = assertThrows(DesignRefusedException.class,
                () -> CompensatorDesign.place(bank(1e-3), STAGE, control, target, 0));
        assertTrue(refused.getMessage().contains(word), refused.getMessage());
    }

    private static Compensator placed(double boostDeg, double plantPhaseDeg, double fc) {
        double marginDeg = 20;
        double delayS = (plantPhaseDeg + 90 + boostDeg - marginDeg) / 360 / fc;
        if (delayS < 0) {
            marginDeg = boostDeg + plantPhaseDeg + 90;
            delayS = 0;
        }
        return CompensatorDesign.place(bank(20e-3), STAGE, new VoltageMode(1.5, delayS), new LoopTarget(fc, marginDeg), 0);
    }

    private static Bank bank(double esr) {
        return new Bank(List.of(new Branch("c", 1, new SeriesRlc(500e-6, esr, 1e-9), SeriesPath.NONE, SeriesPath.NONE)));
    }
}
