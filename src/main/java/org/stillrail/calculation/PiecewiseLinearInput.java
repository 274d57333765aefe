package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.Size;

/** A current given by its corners. */
@Schema(name = "PiecewiseLinearCurrent",
        description = "kind piecewise-linear: straight lines between the corners and from the last back to the first.")
record PiecewiseLinearInput(
        @Schema(description = "s", example = "2e-6") @NotNull @Positive Double periodS,
        @Schema(description = "s, from 0, strictly increasing, below periodS", example = "[0, 5e-7]")
        @NotNull @Size(min = 2, max = Limits.TABLE_POINTS) double[] timeS,
        @Schema(description = "A, one for each time", example = "[-1, 1]")
        @NotNull @Size(min = 2, max = Limits.TABLE_POINTS) double[] currentA) implements CurrentInput, CrossChecked {

    @Override
    public void check(String path, FieldProblems problems) {
        String times = FieldProblems.path(path, "timeS");
        ListRules.increasingFromZero(times, timeS, "s", problems);
        ListRules.sameLength(FieldProblems.path(path, "currentA"), currentA, "timeS", timeS, problems);
        if (timeS != null && timeS.length > 0 && periodS != null && !(timeS[timeS.length - 1] < periodS) && !closes()) {
            problems.add(FieldProblems.path(times, timeS.length - 1),
                    "must be below periodS, where the current is back at its first corner");
        }
    }

    /** Whether the last corner only repeats the first at the end of the period. */
    private boolean closes() {
        int last = timeS.length - 1;
        return last > 1 && timeS[last] == periodS && currentA != null && currentA.length == timeS.length
                && currentA[last] == currentA[0];
    }
}
