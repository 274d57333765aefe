package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;

/** What {@code step} is asked. */
@Schema(name = "StepRequest")
record LoadStepRequest(
        @NotNull @Valid BankInput bank,
        @Valid OperatingPointInput operatingPoint,
        @Schema(description = "Absent: the bank alone meets the step, the source's current stays at fromA")
        @Valid ConverterInput converter,
        @NotNull @Valid LoadInput load,
        @Schema(description = "s", example = "0.0002") @NotNull @Positive Double durationS,
        @Schema(description = "Whether the duty stays in 0..1, and the inductor's slew within its limits", defaultValue = "true")
        Boolean dutyLimits,
        @Schema(description = "Points of the waveform", defaultValue = "1000") @Min(2) @Max(Limits.SAMPLES) Integer samples,
        @Schema(description = "V either side of the final value; settledAtS is null without it", example = "0.01")
        @Positive Double settleBandV) implements CalculationRequest {
}
