package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.PositiveOrZero;

/** The buck converter that a loop or a load step closes round the bank. */
@Schema(name = "Converter", description = "A buck converter; inductance and resistance are of each phase.")
record ConverterInput(
        @Schema(description = "V", example = "12") @NotNull @Positive Double inputV,
        @Schema(description = "V, below inputV", example = "3.3") @NotNull @Positive Double outputV,
        @Schema(description = "H of each phase", example = "4.7e-6") @NotNull @Positive Double inductanceH,
        @Schema(description = "ohm of each phase", example = "0.01") @NotNull @PositiveOrZero Double inductorResistanceOhm,
        @Schema(description = "Hz", example = "500000") @NotNull @Positive Double switchingHz,
        @Schema(defaultValue = "1") @Min(1) @Max(Limits.PHASES) Integer phases,
        @NotNull @Valid ControlInput control) implements CrossChecked {

    @Override
    public void check(String path, FieldProblems problems) {
        StepDown.check(path, inputV, outputV, problems);
    }

    int phaseCount() {
        return phases == null ? 1 : phases;
    }
}
