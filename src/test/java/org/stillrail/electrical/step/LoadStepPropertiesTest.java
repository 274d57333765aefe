package org.stillrail.electrical.step;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.Control;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.converter.VoltageMode;

/** What must hold for any bank and converter. */
class LoadStepPropertiesTest {

    @Property(tries = 150)
    void everyCombinationIsAnsweredWithNumbers(@ForAll long seed) {
        RandomCases cases = new RandomCases(seed);
        StepRequest request = request(cases, cases.coin());
        StepResult got;
        try {
            got = LoadStep.of(request);
        } catch (StepBudgetException | StepRefusedException inWords) {
            assertTrue(inWords.getMessage().length() > 40);
            return;
        }
        double lowest = 0;
        double highest = 0;
        for (double current : got.inductorA()) {
            assertTrue(Double.isFinite(current));
        }
        for (double deviation : got.deviationV()) {
            assertTrue(Double.isFinite(deviation));
            lowest = Math.min(lowest, deviation);
            highest = Math.max(highest, deviation);
        }
        double scale = 1e-9 * (got.overshootV() + got.undershootV());
        assertTrue(got.undershootV() >= -lowest - scale && got.overshootV() >= highest - scale);
        assertEquals(request.load().fromA(), got.inductorA()[0], 0);
        assertEquals(0, got.deviationV()[0], 0);
    }

    @Property(tries = 40)
    void theOrderOfBranchesDoesNotMatter(@ForAll long seed) {
        RandomCases cases = new RandomCases(seed);
        StepRequest request = request(cases, false);
        List<Branch> reversed = new ArrayList<>(request.bank().branches());
        Collections.reverse(reversed);
        same(request, new StepRequest(new Bank(reversed), request.converter(), request.load(), request.durationS(), request.limited(), 200, null), 1);
    }

    /** The way back is mirrored where no limit is met and walked where one is; either way it is the response to the load's way back. */
    @Property(tries = 60)
    void theWayBackIsTheResponseToTheLoadGoingBack(@ForAll long seed) {
        RandomCases cases = new RandomCases(seed);
        StepRequest request = request(cases, cases.coin());
        ThereAndBack pair;
        StepResult walked;
        try {
            pair = LoadStep.thereAndBack(request, new SeriesEquivalent(), Closeness.FULL);
            walked = LoadStep.of(request.back());
        } catch (StepBudgetException | StepRefusedException unanswered) {
            return;
        }
        double scale = 1e-9 * (walked.overshootV() + walked.undershootV());
        assertEquals(walked.undershootV(), pair.back().undershootV(), scale);
        assertEquals(walked.overshootV(), pair.back().overshootV(), scale);
        assertArrayEquals(walked.deviationV(), pair.back().deviationV(), scale);
        assertArrayEquals(walked.inductorA(), pair.back().inductorA(), 1e-9 * (Math.abs(request.load().fromA()) + Math.abs(request.load().toA())));
        assertEquals(walked.undershootAtS(), pair.back().undershootAtS());
        assertEquals(walked.settledAtS(), pair.back().settledAtS());
        assertEquals(walked.warnings(), pair.back().warnings());
    }

    @Property(tries = 40)
    void withoutLimitsTheDeviationScalesWithTheStep(@ForAll long seed) {
        RandomCases cases = new RandomCases(seed);
        StepRequest request = request(cases, false).unlimited();
        Load load = request.load();
        Load tripled = new Load(load.fromA(), load.fromA() - 3 * load.stepA(), 3 * load.slewAPerS());
        same(request, new StepRequest(request.bank(), request.converter(), tripled, request.durationS(), false, 200, null), -3);
    }

    @Property(tries = 40)
    void equalBranchesAreOneBranchWithTheSumOfTheirParts(@ForAll long seed) {
        RandomCases cases = new RandomCases(seed);
        StepRequest request = request(cases, cases.coin());
        Branch first = request.bank().branches().get(0);
        List<Branch> twice = new ArrayList<>(request.bank().branches());
        twice.add(new Branch("again", first.count(), first.part(), first.mounting(), first.shared()));
        List<Branch> merged = new ArrayList<>(request.bank().branches());
        merged.set(0, new Branch("both", 2 * first.count(), first.part(), first.mounting(),
                new SeriesPath(first.shared().resistanceOhm() / 2, first.shared().inductanceH() / 2)));
        same(new StepRequest(new Bank(twice), request.converter(), request.load(), request.durationS(), request.limited(), 200, null),
                new StepRequest(new Bank(merged), request.converter(), request.load(), request.durationS(), request.limited(), 200, null), 1);
    }

    @Property(tries = 20)
    void noStepNoDeviation(@ForAll long seed) {
        RandomCases cases = new RandomCases(seed);
        StepRequest request = request(cases, true);
        Load flat = new Load(request.load().fromA(), request.load().fromA(), 1e6);
        StepResult got = LoadStep.of(new StepRequest(request.bank(), request.converter(), flat, request.durationS(), false, 50, 1e-6));
        assertEquals(0, got.undershootV(), 0);
        assertEquals(0, got.overshootV(), 0);
        assertNull(got.undershootAtS());
        assertEquals(0, got.settledAtS(), 0);
    }

    @Test
    void aTinyDelayIsNoDelay() {
        RandomCases cases = new RandomCases(11);
        Bank bank = cases.bank();
        PowerStage stage = cases.stage();
        Converter converter = cases.soundConverter(bank, stage, new VoltageMode(1, 0));
        Converter delayed = new Converter(stage, new VoltageMode(1, 1e-14), converter.compensator());
        Load load = new Load(20, 0.5, 1e8);
        same(new StepRequest(bank, converter, load, 100e-6, true, 200, null), new StepRequest(bank, delayed, load, 100e-6, true, 200, null), 1);
    }

    private static StepRequest request(RandomCases cases, boolean delayed) {
        Bank bank = cases.bank();
        PowerStage stage = cases.stage();
        Control control = cases.coin() ? cases.voltageMode(delayed) : cases.currentMode(stage);
        boolean wild = cases.coin();
        Converter converter = wild ? new Converter(stage, control, cases.compensator()) : cases.soundConverter(bank, stage, control);
        if (wild && cases.coin()) {
            converter = new Converter(stage, control, new Compensator(10, List.of(), List.of()));
        }
        return new StepRequest(bank, cases.coin() || wild ? converter : null, cases.load(), cases.between(1e-5, 2e-4), cases.coin(), 200, null);
    }

    private static void same(StepRequest a, StepRequest b, double factor) {
        StepResult first;
        StepResult second;
        try {
            first = LoadStep.of(a);
            second = LoadStep.of(b);
        } catch (StepBudgetException | StepRefusedException inWords) {
            return; // a loop that runs away or rings for ever has nothing to compare
        }
        double scale = Math.abs(factor) * (first.undershootV() + first.overshootV());
        assertEquals(factor > 0 ? factor * first.undershootV() : -factor * first.overshootV(), second.undershootV(), 1e-4 * scale);
        for (int i = 0; i < first.timeS().length; i++) {
            assertEquals(factor * first.deviationV()[i], second.deviationV()[i], 1e-4 * scale, "at " + first.timeS()[i]);
        }
    }
}
