package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.step.Load;
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

    static StepPair of(Bank bank, Converter converter, LoadStep figures, double durationS, int samples) {
        return new StepPair(
                respond(bank, converter, figures.fromA(), figures.toA(), figures.slewAPerS(), durationS, samples),
                respond(bank, converter, figures.toA(), figures.fromA(), figures.slewAPerS(), durationS, samples));
    }

    private static StepResult respond(Bank bank, Converter converter, double fromA, double toA, double slew, double durationS, int samples) {
        StepRequest request = StepRequest.of(bank, converter, new Load(fromA, toA, slew), durationS).withSamples(samples);
        return org.stillrail.electrical.step.LoadStep.of(request);
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
