package org.stillrail.electrical.evaluation;

import java.util.LinkedHashMap;
import java.util.Map;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.step.BranchRealisation;
import org.stillrail.electrical.step.Closeness;
import org.stillrail.electrical.step.Load;
import org.stillrail.electrical.step.StepRequest;
import org.stillrail.electrical.step.StepResult;
import org.stillrail.electrical.step.ThereAndBack;

/**
 * The response to the rail's load step and to its way back, with duty limits unless it says otherwise.
 *
 * @param step    from the rail's first current to its second
 * @param release back
 */
public record StepPair(StepResult step, StepResult release) {

    private static final double RECOVERIES = 3;
    private static final double CROSSOVER_PERIODS = 5;
    private static final int FEWEST_SAMPLES = 2;

    /** @param converter null for the bank alone */
    static StepPair of(Bank bank, Converter converter, LoadStep figures, double durationS, int samples, BranchRealisation inTime) {
        return of(request(bank, converter, figures, durationS, samples), inTime, Closeness.FULL);
    }

    /** Without curves. */
    static StepPair quick(Bank bank, Converter converter, LoadStep figures, double durationS, BranchRealisation inTime) {
        return of(request(bank, converter, figures, durationS, FEWEST_SAMPLES), inTime, Closeness.QUICK);
    }

    /** With curves and without duty limits: the response of the linear equations. */
    static StepPair unlimited(Bank bank, Converter converter, LoadStep figures, double durationS, int samples, BranchRealisation inTime) {
        return of(request(bank, converter, figures, durationS, samples).unlimited(), inTime, Closeness.FULL);
    }

    static StepPair rough(Bank bank, Converter converter, LoadStep figures, double durationS, BranchRealisation inTime) {
        return of(unbanded(bank, converter, step(figures), durationS, FEWEST_SAMPLES), inTime, Closeness.ROUGH);
    }

    static StepResult roughStep(Bank bank, Converter converter, LoadStep figures, double durationS, BranchRealisation inTime) {
        return org.stillrail.electrical.step.LoadStep.of(
                unbanded(bank, converter, step(figures), durationS, FEWEST_SAMPLES), inTime, Closeness.ROUGH);
    }

    static StepResult roughRelease(Bank bank, Converter converter, LoadStep figures, double durationS, BranchRealisation inTime) {
        return org.stillrail.electrical.step.LoadStep.of(
                unbanded(bank, converter, step(figures).back(), durationS, FEWEST_SAMPLES), inTime, Closeness.ROUGH);
    }

    private static StepPair of(StepRequest request, BranchRealisation inTime, Closeness closeness) {
        ThereAndBack pair = org.stillrail.electrical.step.LoadStep.thereAndBack(request, inTime, closeness);
        return new StepPair(pair.there(), pair.back());
    }

    static Load step(LoadStep figures) {
        return new Load(figures.fromA(), figures.toA(), figures.slewAPerS());
    }

    private static StepRequest request(Bank bank, Converter converter, LoadStep figures, double durationS, int samples) {
        return unbanded(bank, converter, step(figures), durationS, samples).withSettleBandV(figures.settledWithinV());
    }

    /** Nobody asks of a rough step when it has settled, and following that takes time. */
    private static StepRequest unbanded(Bank bank, Converter converter, Load load, double durationS, int samples) {
        return StepRequest.of(bank, converter, load, durationS).withSamples(samples);
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

    /**
     * The figures of a changed bank that was only screened, by what the fits made of the bank before the change: each extremum times
     * fitted over screened. As screened where one of the two is not known.
     */
    StepPair correctedAs(Tried<StepPair> screenedBefore, Tried<StepPair> fittedBefore) {
        if (!screenedBefore.answered() || !fittedBefore.answered()) {
            return this;
        }
        StepPair screened = screenedBefore.value();
        StepPair fitted = fittedBefore.value();
        return new StepPair(corrected(step, screened.step, fitted.step), corrected(release, screened.release, fitted.release));
    }

    private static StepResult corrected(StepResult changed, StepResult screened, StepResult fitted) {
        return changed.withExtrema(corrected(changed.undershootV(), screened.undershootV(), fitted.undershootV()),
                corrected(changed.overshootV(), screened.overshootV(), fitted.overshootV()));
    }

    private static double corrected(double changed, double screened, double fitted) {
        return screened > 0 ? changed * (fitted / screened) : changed;
    }

    /** Whether the duty was held at a limit on either way. */
    public boolean metLimit() {
        return step.metLimit() || release.metLimit();
    }

    /**
     * The ways that a duty limit held back, as they would be without one, by their name.
     *
     * @param unlimited the pair without duty limits; null where none was met
     */
    public Map<String, StepResult> heldBack(StepPair unlimited) {
        Map<String, StepResult> ways = new LinkedHashMap<>();
        if (unlimited != null && step.metLimit()) {
            ways.put("step", unlimited.step);
        }
        if (unlimited != null && release.metLimit()) {
            ways.put("release", unlimited.release);
        }
        return ways;
    }

    /** Worst error of a branch's fit, null where every branch is exact. */
    public Double fitErrorPercent() {
        return step.fitErrorPercent() == null ? release.fitErrorPercent() : step.fitErrorPercent();
    }

    /** Farthest below nominal, where the set-point at no load stands, in V: with a load line either response begins below it. */
    double belowNominalV(LoadStep figures) {
        return Math.max(figures.droopV(figures.fromA()) + step.undershootV(), figures.droopV(figures.toA()) + release.undershootV());
    }

    /** Farthest above nominal likewise, 0 or positive. */
    double aboveNominalV(LoadStep figures) {
        return Math.max(0, Math.max(step.overshootV() - figures.droopV(figures.fromA()), release.overshootV() - figures.droopV(figures.toA())));
    }

    /** Largest fall below the voltage before either response, in V, 0 or positive. */
    public double undershootV() {
        return Math.max(step.undershootV(), release.undershootV());
    }

    /** Largest rise likewise. */
    public double overshootV() {
        return Math.max(step.overshootV(), release.overshootV());
    }
}
