package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.step.Load;
import org.stillrail.electrical.step.SeriesEquivalent;
import org.stillrail.electrical.step.StepRequest;
import org.stillrail.electrical.step.StepResult;

/**
 * The response to the rail's load step and to its way back, with duty limits.
 *
 * @param step    from the rail's first current to its second
 * @param release back
 */
public record StepPair(StepResult step, StepResult release) {

    private static final double RECOVERIES = 3;
    private static final double CROSSOVER_PERIODS = 5;

    /** @param converter null for the bank alone */
    static StepPair of(Bank bank, Converter converter, LoadStep figures, double durationS, int samples) {
        return new StepPair(step(bank, converter, figures, durationS, samples), release(bank, converter, figures, durationS, samples));
    }

    static StepResult step(Bank bank, Converter converter, LoadStep figures, double durationS, int samples) {
        return respond(bank, converter, new Load(figures.fromA(), figures.toA(), figures.slewAPerS()), durationS, samples);
    }

    static StepResult release(Bank bank, Converter converter, LoadStep figures, double durationS, int samples) {
        return respond(bank, converter, new Load(figures.toA(), figures.fromA(), figures.slewAPerS()), durationS, samples);
    }

    private static StepResult respond(Bank bank, Converter converter, Load load, double durationS, int samples) {
        return org.stillrail.electrical.step.LoadStep.of(StepRequest.of(bank, converter, load, durationS).withSamples(samples));
    }

    /**
     * The bank as the step sees it: branches that are no series R-L-C by their equivalent at the crossover. The step would
     * find the same, but not without looking for the crossover again.
     */
    static Bank inTime(Bank bank, double crossoverHz) {
        return bank.withEach(branch -> branch.part() instanceof SeriesRlc ? branch
                : branch.asOne(SeriesEquivalent.equivalent(branch.at(crossoverHz), crossoverHz)));
    }

    /** The load's ramp, three times as long as the inductor needs at its slowest, and five periods of the crossover. */
    static double durationS(PowerStage stage, LoadStep figures, double crossoverHz) {
        double currentA = Math.abs(figures.toA() - figures.fromA());
        double slowest = Math.min(stage.steepestRiseAPerS(), stage.steepestFallAPerS());
        return currentA / figures.slewAPerS() + RECOVERIES * currentA / slowest + CROSSOVER_PERIODS / crossoverHz;
    }

    /** For the bank without its loop, whose deviation grows without end: the ramp and one period of the crossover. */
    static double aloneDurationS(LoadStep figures, double crossoverHz) {
        return Math.abs(figures.toA() - figures.fromA()) / figures.slewAPerS() + 1 / crossoverHz;
    }

    /** Largest fall below the set-point in either response, in V, 0 or positive. */
    public double undershootV() {
        return Math.max(step.undershootV(), release.undershootV());
    }

    /** Largest rise likewise. */
    public double overshootV() {
        return Math.max(step.overshootV(), release.overshootV());
    }
}
