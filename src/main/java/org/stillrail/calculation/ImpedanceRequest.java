package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;

/** What {@code impedance} is asked. */
@Schema(name = "ImpedanceRequest")
record ImpedanceRequest(
        @NotNull @Valid BankInput bank,
        @NotNull @Valid GridInput grid,
        @Valid OperatingPointInput operatingPoint) implements CalculationRequest {
}
