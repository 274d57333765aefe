package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.ripple.Ripple;
import org.stillrail.electrical.step.BranchRealisation;
import org.stillrail.electrical.step.FittedBranch;
import org.stillrail.electrical.step.RealisedBank;
import org.stillrail.electrical.stress.PartStress;

/**
 * What the verdicts need to know of a bank at one corner. A part that the rail does not ask for, or that the converter's
 * kind does not allow, is null.
 *
 * @param ripplePeakToPeakV at the load; null for a flyback of unknown turns
 * @param rippleAtConverterV peak to peak at the converter's node; null at one node, and where it is not known
 * @param quiet             empty where no ripple limit is set
 * @param loop              null without a control
 * @param steps             through the fits of the branches, or as screened; null without a control or a load step
 * @param need              null without a load step
 * @param screened          the same steps through coarse fits, to see which corners matter
 * @param stress            of one part of each branch, null for figures typed in; the whole is null for a flyback of unknown turns,
 *                          and where a {@link Probe} does not want it
 */
record CornerFigures(
        Corner corner, Bank bank, Tried<Double> ripplePeakToPeakV, List<QuietHarmonic> quiet, Tried<LoopBand> loop, Tried<StepPair> steps,
        Tried<ChargeNeed> need, Double rippleAtConverterV, Tried<StepPair> screened, Tried<List<PartStress>> stress) {

    private static final int FEWEST_SAMPLES = 2;
    private static final int CURVE = 600;

    /**
     * @param compensation null without a control
     * @param fits         shared by all corners
     */
    static CornerFigures of(EvaluationInput input, Corner corner, Bank bank, Tried<Compensation> compensation, Probe probe, Fits fits) {
        RailFigures rail = input.rail();
        Tried<PeriodicCurrent> current = Tried.of(() -> corner.current(rail));
        boolean known = !current.answered() || current.value() != null;
        Tried<Double> ripple = known ? current.then(each -> ripplePeakToPeakV(bank, each, probe)) : null;
        Double atConverter = bank.distance() == null || ripple == null || !ripple.answered() ? null
                : Ripple.quickAtConverterV(bank, current.value());
        List<QuietHarmonic> quiet = rail.ripple() == null || ripple == null || !ripple.answered() ? List.of()
                : QuietHarmonic.of(bank, current.value(), rail.ripple().peakToPeakV());
        Tried<List<PartStress>> stress = probe.wants(Probe.Item.STRESS) ? CornerStress.of(input, corner, bank) : null;
        if (rail.converter().topology() != Topology.BUCK) {
            return new CornerFigures(corner, bank, ripple, quiet, null, null, null, atConverter, null, stress);
        }
        Tried<ChargeNeed> need = rail.loadStep() == null ? null : Tried.of(() -> ChargeNeed.of(corner.stage(rail), rail.loadStep()));
        if (compensation == null) {
            return new CornerFigures(corner, bank, ripple, quiet, null, null, need, atConverter, null, stress);
        }
        Tried<LoopBand> loop = probe.wants(Probe.Item.LOOP)
                ? compensation.then(placed -> LoopBand.of(bank, placed.at(corner, rail), placed.wantedHz())) : probe.known().loop();
        Tried<StepPair> screened = rail.loadStep() == null ? null : probe.exhausted() != null ? probe.exhausted()
                : !compensation.answered() ? Tried.refused(compensation.refusal())
                : loop.then(band -> screened(rail, bank, compensation.value().at(corner, rail), band, probe, fits.coarse()));
        Tried<StepPair> steps = screened == null || !screened.answered() || probe.known() == null ? screened
                : Tried.answer(screened.value().correctedAs(probe.known().screened(), probe.known().steps()));
        return new CornerFigures(corner, bank, ripple, quiet, loop, steps, need, atConverter, screened, stress);
    }

    /** What a part of one branch goes through; null where nobody knows. */
    PartStress stressOf(int branch) {
        return stress == null || !stress.answered() ? null : stress.value().get(branch);
    }

    private static double exactRippleV(Bank bank, PeriodicCurrent current) {
        return Ripple.of(bank, current, FEWEST_SAMPLES).peakToPeakV();
    }

    /** With the ripple to the last digit instead of to a thousandth. */
    CornerFigures withExactRipple(RailFigures rail) {
        return new CornerFigures(corner, bank, Tried.of(() -> exactRippleV(bank, corner.current(rail))), quiet, loop, steps, need,
                rippleAtConverterV, screened, stress);
    }

    /** To the last digit where it is shown, to a thousandth where it only looks for the worst. */
    private static double ripplePeakToPeakV(Bank bank, PeriodicCurrent current, Probe probe) {
        if (!probe.wants(Probe.Item.RIPPLE)) {
            return probe.known().ripplePeakToPeakV().value();
        }
        return probe.exactRipple() ? exactRippleV(bank, current) : Ripple.quickPeakToPeakV(bank, current);
    }

    private static StepPair screened(RailFigures rail, Bank bank, Converter converter, LoopBand band, Probe probe, FittedBranch coarse) {
        StepPair known = probe.known() == null || !probe.known().screened().answered() ? null : probe.known().screened().value();
        double crossoverHz = crossoverHz(rail, band);
        double durationS = StepPair.durationS(converter.stage(), rail.loadStep(), crossoverHz);
        BranchRealisation inTime = RealisedBank.of(bank, coarse, crossoverHz);
        boolean step = known == null || probe.wants(Probe.Item.STEP);
        boolean release = known == null || probe.wants(Probe.Item.RELEASE);
        if (step && release) {
            return StepPair.rough(bank, converter, rail.loadStep(), durationS, inTime);
        }
        return new StepPair(
                step ? StepPair.roughStep(bank, converter, rail.loadStep(), durationS, inTime) : known.step(),
                release ? StepPair.roughRelease(bank, converter, rail.loadStep(), durationS, inTime) : known.release());
    }

    /** Whether the steps are those through the fits, or will not be had anyway. */
    boolean stepsFinal() {
        return steps == null || steps != screened || !loop.answered() || !loop.value().stable() || steps.exhausted();
    }

    /**
     * With the steps of the branches' fits.
     *
     * @param fits  shared by all corners of a bank
     * @param drawn whether their curves are shown
     */
    CornerFigures withFittedSteps(RailFigures rail, Compensation compensation, FittedBranch fits, boolean drawn) {
        Tried<StepPair> fitted = walked(rail, compensation, fits, (converter, durationS, inTime) ->
                drawn ? StepPair.of(bank, converter, rail.loadStep(), durationS, CURVE, inTime)
                        : StepPair.quick(bank, converter, rail.loadStep(), durationS, inTime));
        return new CornerFigures(corner, bank, ripplePeakToPeakV, quiet, loop, fitted, need, rippleAtConverterV, screened, stress);
    }

    /** The steps of the branches' fits as they would be without duty limits; null where none was met, and where there are no steps. */
    StepPair stepsUnlimited(RailFigures rail, Compensation compensation, FittedBranch fits) {
        if (steps == null || !steps.answered() || !steps.value().metLimit()) {
            return null;
        }
        return walked(rail, compensation, fits,
                (converter, durationS, inTime) -> StepPair.unlimited(bank, converter, rail.loadStep(), durationS, CURVE, inTime)).value();
    }

    private interface Walk {
        StepPair of(Converter converter, double durationS, BranchRealisation inTime);
    }

    private Tried<StepPair> walked(RailFigures rail, Compensation compensation, FittedBranch fits, Walk walk) {
        Converter converter = compensation.at(corner, rail);
        double crossoverHz = crossoverHz(rail, loop.value());
        double durationS = StepPair.durationS(converter.stage(), rail.loadStep(), crossoverHz);
        return Tried.of(() -> walk.of(converter, durationS, RealisedBank.of(bank, fits, crossoverHz)));
    }

    private static double crossoverHz(RailFigures rail, LoopBand band) {
        if (!band.stable()) {
            throw new IllegalArgumentException("The closed loop is unstable");
        }
        return KeyFrequencies.of(rail.converter(), band.crossoverHz()).crossoverHz();
    }

    /** With the crossover at this corner, wished or usual where the loop is not known. */
    KeyFrequencies frequencies(RailFigures rail) {
        return KeyFrequencies.of(rail.converter(), loop != null && loop.answered() ? loop.value().crossoverHz() : null);
    }

    double crossoverHz(RailFigures rail) {
        return frequencies(rail).crossoverHz();
    }
}
