package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.ripple.Ripple;

/**
 * What the verdicts need to know of a bank at one corner. A part that the rail does not ask for, or that the converter's
 * kind does not allow, is null.
 *
 * @param ripplePeakToPeakV null for a converter whose current is not modelled
 * @param quiet             empty where no ripple limit is set
 * @param loop              null without a control
 * @param steps             null without a control or a load step
 * @param need              null without a load step
 */
record CornerFigures(
        Corner corner, Bank bank, Tried<Double> ripplePeakToPeakV, List<QuietHarmonic> quiet, Tried<LoopBand> loop, Tried<StepPair> steps,
        Tried<ChargeNeed> need) {

    private static final int FEW_SAMPLES = 2;

    /** @param compensation null without a control */
    static CornerFigures of(EvaluationInput input, Corner corner, Tried<Compensation> compensation) {
        RailFigures rail = input.rail();
        Bank bank = corner.bank(input);
        if (rail.converter().topology() != Topology.BUCK) {
            return new CornerFigures(corner, bank, null, List.of(), null, null, null);
        }
        Tried<Double> ripple = Tried.of(() -> Ripple.of(bank, corner.current(rail), FEW_SAMPLES).peakToPeakV());
        List<QuietHarmonic> quiet = rail.ripple() == null || !ripple.answered() ? List.of()
                : QuietHarmonic.of(bank, corner.current(rail), rail.ripple().peakToPeakV());
        Tried<ChargeNeed> need = rail.loadStep() == null ? null : Tried.of(() -> ChargeNeed.of(corner.stage(rail), rail.loadStep()));
        if (compensation == null) {
            return new CornerFigures(corner, bank, ripple, quiet, null, null, need);
        }
        Tried<LoopBand> loop = compensation.then(placed -> LoopBand.of(bank, placed.at(corner, rail)));
        Tried<StepPair> steps = rail.loadStep() == null ? null : steps(rail, corner, bank, compensation, loop);
        return new CornerFigures(corner, bank, ripple, quiet, loop, steps, need);
    }

    private static Tried<StepPair> steps(
            RailFigures rail, Corner corner, Bank bank, Tried<Compensation> compensation, Tried<LoopBand> loop) {
        if (!loop.answered()) {
            return Tried.refused(loop.refusal());
        }
        if (!loop.value().stable()) {
            return Tried.refused("The closed loop is unstable");
        }
        return compensation.then(placed -> StepPair.of(bank, placed.at(corner, rail), rail.loadStep(),
                StepPair.durationS(corner.stage(rail), rail.loadStep(), crossoverHz(rail, loop)), FEW_SAMPLES));
    }

    /** Where the loop crosses 1; else the wanted crossover; else the usual one. */
    private static double crossoverHz(RailFigures rail, Tried<LoopBand> loop) {
        return KeyFrequencies.of(rail.converter(), loop.value().crossoverHz()).crossoverHz();
    }

    /** With the crossover at this corner, wished or usual where the loop is not known. */
    KeyFrequencies frequencies(RailFigures rail) {
        return KeyFrequencies.of(rail.converter(), loop != null && loop.answered() ? loop.value().crossoverHz() : null);
    }

    double crossoverHz(RailFigures rail) {
        return frequencies(rail).crossoverHz();
    }
}
