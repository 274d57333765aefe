package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Positive;
import org.stillrail.electrical.capacitor.OperatingPoint;

/** Where library parts stand. */
@Schema(name = "OperatingPoint", description = "Where library parts are taken; inline models do not change with it.")
record OperatingPointInput(
        @Schema(description = "V of DC bias, 0 where absent", example = "3.3") Double biasV,
        @Schema(description = "degC of the part itself, 25 where absent", example = "25")
        @DecimalMin("-273.15") Double temperatureC,
        @Schema(description = "Hours since the last heat, the part's referee age where absent", example = "1000")
        @Positive Double ageHours) {

    static OperatingPoint toPoint(OperatingPointInput input) {
        OperatingPoint reference = OperatingPoint.REFERENCE;
        if (input == null) {
            return reference;
        }
        return new OperatingPoint(
                input.biasV == null ? reference.biasV() : input.biasV,
                input.temperatureC == null ? reference.temperatureC() : input.temperatureC,
                input.ageHours);
    }
}
