package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.PositiveOrZero;

/** Peak current-mode control. */
@Schema(name = "CurrentModeControl", description = """
        kind current-mode: the inductor is a current source of gain 1 / senseOhm; T = C(s) / senseOhm Zbank H(s) with the \
        sampling effect H.""")
record CurrentModeInput(
        @Schema(description = "ohm", example = "0.01") @NotNull @Positive Double senseOhm,
        @Schema(description = "A/s of slope compensation", example = "500000") @NotNull @PositiveOrZero Double slopeAPerS,
        @Valid CompensatorInput compensator,
        @Valid DesignInput design) implements ControlInput {
}
