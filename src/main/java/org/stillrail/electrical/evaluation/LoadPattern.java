package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.requirement.LoadStep;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.step.BranchRealisation;
import org.stillrail.electrical.step.FittedBranch;
import org.stillrail.electrical.step.LoadCourse;
import org.stillrail.electrical.step.RealisedBank;
import org.stillrail.electrical.step.StepRequest;
import org.stillrail.electrical.step.StepResult;
import org.stillrail.electrical.step.WorstLoad;
import org.stillrail.electrical.step.WorstLoadSearch;

/**
 * The load pattern that does worst at the shown corner, and the output while it runs.
 *
 * @param linear  without duty limits, as it was found
 * @param limited with them; null where that cannot be had
 * @param beginsV where both begin, from the rest at the lower current: 0 or negative, not 0 only with a load line
 */
public record LoadPattern(WorstLoad worst, StepResult linear, StepResult limited, double beginsV) {

    private static final int SAMPLES = 800;
    /** So much of its length is shown before and after it. */
    private static final double AROUND = 0.1;

    /** Null where no step was worked out at that corner. */
    static Tried<LoadPattern> of(RailFigures rail, CornerFigures shown, Tried<Compensation> compensation, FittedBranch fits) {
        if (shown.steps() == null || !shown.steps().answered()) {
            return null;
        }
        return compensation.then(placed -> of(rail.loadStep(), shown.bank(), placed.at(shown.corner(), rail), shown.crossoverHz(rail), fits));
    }

    private static LoadPattern of(LoadStep step, Bank bank, Converter converter, double crossoverHz, FittedBranch fits) {
        BranchRealisation inTime = RealisedBank.of(bank, fits, crossoverHz);
        WorstLoad worst = WorstLoadSearch.of(bank, converter, StepPair.step(step), StepPair.durationS(converter.stage(), step, crossoverHz), inTime)
                .fromItsFirstEdge(AROUND);
        LoadCourse course = worst.course();
        StepRequest request = StepRequest.of(bank, converter, StepPair.step(step), course.endS() * (1 + AROUND)).withSamples(SAMPLES);
        return new LoadPattern(worst, org.stillrail.electrical.step.LoadStep.along(course, request.unlimited(), inTime),
                Tried.of(() -> org.stillrail.electrical.step.LoadStep.along(course, request, inTime)).value(),
                -step.droopV(course.fromA() - Math.min(step.fromA(), step.toA())));
    }
}
