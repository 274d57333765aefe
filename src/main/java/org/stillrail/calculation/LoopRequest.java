package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;

/** What {@code loop} is asked. */
@Schema(name = "LoopRequest")
record LoopRequest(
        @NotNull @Valid BankInput bank,
        @Valid OperatingPointInput operatingPoint,
        @NotNull @Valid GridInput grid,
        @NotNull @Valid ConverterInput converter) implements CalculationRequest {
}
