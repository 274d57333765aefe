package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;

/** A load step with a slope. */
@Schema(name = "Load", description = "A current sink that leaves fromA at t = 0.")
record LoadInput(
        @Schema(description = "A", example = "1") @NotNull Double fromA,
        @Schema(description = "A", example = "6") @NotNull Double toA,
        @Schema(description = "A/s, the size of the slope", example = "1e7") @NotNull @Positive Double slewAPerS) {
}
