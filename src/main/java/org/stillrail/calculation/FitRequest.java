package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import org.stillrail.electrical.fit.FitSettings;

/** What {@code fit} is asked. */
@Schema(name = "FitRequest")
record FitRequest(
        @Schema(description = "A model of kind table") @NotNull @Valid ModelInput model,
        @Schema(description = "Most poles; chosen by the error where absent") @Min(1) @Max(FitSettings.HIGHEST_ORDER) Integer maxOrder)
        implements CalculationRequest, CrossChecked {

    @Override
    public void check(String path, FieldProblems problems) {
        if (model != null && !(model instanceof TableInput)) {
            problems.add(FieldProblems.path(FieldProblems.path(path, "model"), "kind"), "must be table: a fit needs points");
        }
    }
}
