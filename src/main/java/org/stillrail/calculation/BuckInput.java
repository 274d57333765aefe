package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;

/** The inductor current of a buck converter. */
@Schema(name = "BuckCurrent", description = """
        kind buck: ideal switches, duty = outputV / inputV, continuous conduction, phases spread evenly; t = 0 is the turn-on \
        of phase 1.""")
record BuckInput(
        @Schema(description = "V", example = "12") @NotNull @Positive Double inputV,
        @Schema(description = "V, below inputV", example = "3.3") @NotNull @Positive Double outputV,
        @Schema(description = "H of each phase", example = "4.7e-6") @NotNull @Positive Double inductanceH,
        @Schema(description = "Hz of each phase", example = "500000") @NotNull @Positive Double switchingHz,
        @Schema(defaultValue = "1") @Min(1) @Max(Limits.PHASES) Integer phases) implements CurrentInput, CrossChecked {

    @Override
    public void check(String path, FieldProblems problems) {
        StepDown.check(path, inputV, outputV, problems);
    }
}
