package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;

/** What {@code ripple} is asked. */
@Schema(name = "RippleRequest")
record RippleRequest(
        @NotNull @Valid BankInput bank,
        @Valid OperatingPointInput operatingPoint,
        @NotNull @Valid CurrentInput current,
        @Schema(description = "Points of the waveform over one period", defaultValue = "2000")
        @Min(2) @Max(Limits.SAMPLES) Integer samples) implements CalculationRequest {
}
