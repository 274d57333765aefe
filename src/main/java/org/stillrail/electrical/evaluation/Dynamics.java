package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.Loop;
import org.stillrail.electrical.converter.LoopResult;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.Topology;
import org.stillrail.electrical.step.FittedBranch;
import org.stillrail.electrical.step.RealisedBank;
import org.stillrail.electrical.step.StepResult;

/** Loop and load step of one corner as curves for the charts; what cannot be had is null. */
record Dynamics(LoopResult loop, StepPair steps, StepPair stepsUnlimited, StepPair stepsAlone, List<String> warnings) {

    private static final int SAMPLES = 600;

    /** @param compensation null without a control */
    static Dynamics of(
            EvaluationInput input, CornerFigures shown, Tried<Compensation> compensation, KeyFrequencies frequencies, FrequencyGrid grid, FittedBranch fits) {
        RailFigures rail = input.rail();
        if (rail.converter().topology() != Topology.BUCK) {
            return new Dynamics(null, null, null, null, List.of());
        }
        Bank bank = shown.bank();
        LoadStep step = rail.loadStep();
        Tried<LoopResult> loop = compensation == null ? Tried.refused("")
                : compensation.then(placed -> Loop.of(bank, placed.at(shown.corner(), rail), grid));
        StepPair steps = shown.steps() == null ? null : shown.steps().value();
        StepPair unlimited = steps == null ? null : shown.stepsUnlimited(rail, compensation.value(), fits);
        Tried<StepPair> alone = step == null ? Tried.refused("")
                : Tried.of(() -> StepPair.of(bank, null, step, StepPair.aloneDurationS(step, frequencies.crossoverHz()), SAMPLES,
                        RealisedBank.of(bank, fits, frequencies.crossoverHz())));
        List<String> warnings = new ArrayList<>();
        if (loop.answered()) {
            warnings.addAll(loop.value().warnings());
        }
        if (steps != null) {
            for (StepResult each : List.of(steps.step(), steps.release())) {
                warnings.addAll(each.warnings());
            }
        }
        return new Dynamics(loop.value(), steps, unlimited, alone.value(),
                warnings.stream().map(words -> words.endsWith(".") ? words : words + ".").distinct().toList());
    }
}
