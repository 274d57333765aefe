package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.PositiveOrZero;

/** Copper in series: a mounting or a shared path. */
@Schema(name = "SeriesPath", description = "Resistance and inductance in series; what is absent is 0.")
record SeriesPathInput(
        @Schema(description = "ohm", example = "0.0005") @PositiveOrZero Double resistanceOhm,
        @Schema(description = "H", example = "5e-10") @PositiveOrZero Double inductanceH) {
}
