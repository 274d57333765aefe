package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.PositiveOrZero;

/** Voltage-mode control. */
@Schema(name = "VoltageModeControl", description = """
        kind voltage-mode: T = C(s) inputV / rampV Zbank / (Zbank + s L + R) exp(-s delayS).""")
record VoltageModeInput(
        @Schema(description = "V of the modulator's ramp", example = "1") @NotNull @Positive Double rampV,
        @Schema(description = "s of modulator delay", defaultValue = "0", example = "1e-6") @PositiveOrZero Double delayS,
        @Valid CompensatorInput compensator,
        @Valid DesignInput design) implements ControlInput {
}
