package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.Size;
import org.stillrail.electrical.curve.FrequencyGrid;

/** Frequencies, listed or log-spaced. */
@Schema(name = "Grid", description = "Either startHz, stopHz and points (log-spaced, both ends included), or frequencyHz.")
record GridInput(
        @Schema(description = "Hz", example = "100") @Positive Double startHz,
        @Schema(description = "Hz, above startHz", example = "1e8") @Positive Double stopHz,
        @Schema(example = "400") @Min(2) @Max(Limits.GRID_POINTS) Integer points,
        @Schema(description = "Hz, strictly increasing") @Size(min = 1, max = Limits.GRID_POINTS) double[] frequencyHz)
        implements CrossChecked {

    @Override
    public void check(String path, FieldProblems problems) {
        ListRules.increasing(FieldProblems.path(path, "frequencyHz"), frequencyHz, "Hz", problems);
        boolean spaced = startHz != null || stopHz != null || points != null;
        if (spaced && frequencyHz != null) {
            problems.add(path, "has both frequencyHz and a spacing; give frequencyHz, or startHz, stopHz and points");
        } else if (frequencyHz == null) {
            require(path, "startHz", startHz, problems);
            require(path, "stopHz", stopHz, problems);
            require(path, "points", points, problems);
        }
        if (startHz != null && stopHz != null && !(stopHz > startHz)) {
            problems.add(FieldProblems.path(path, "stopHz"), "must be above startHz");
        }
    }

    private static void require(String path, String name, Object value, FieldProblems problems) {
        if (value == null) {
            problems.add(FieldProblems.path(path, name), "is required where frequencyHz is not given");
        }
    }

    FrequencyGrid toGrid() {
        return frequencyHz != null ? FrequencyGrid.of(frequencyHz) : FrequencyGrid.logSpaced(startHz, stopHz, points);
    }
}
