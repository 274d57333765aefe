package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.PositiveOrZero;

/** Constant R, L and C in series. */
@Schema(name = "SeriesRlcModel", description = "kind series-rlc: Z = R + j (w L - 1 / (w C)).")
record SeriesRlcInput(
        @Schema(description = "F", example = "0.00022") @NotNull @Positive Double capacitanceF,
        @Schema(description = "ohm", example = "0.2") @NotNull @PositiveOrZero Double resistanceOhm,
        @Schema(description = "H", example = "3e-9") @NotNull @PositiveOrZero Double inductanceH) implements ModelInput {
}
