package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;

/** What a compensator is to reach. */
@Schema(name = "Design", description = "The compensator is placed for this crossover and phase margin; the answer holds it.")
record DesignInput(
        @Schema(description = "Hz", example = "50000") @NotNull @Positive Double crossoverHz,
        @Schema(description = "degrees", example = "60") @NotNull @Positive @DecimalMax("179") Double phaseMarginDeg) {
}
