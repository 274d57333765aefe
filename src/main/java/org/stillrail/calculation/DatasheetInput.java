package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.PositiveOrZero;

/** Figures of a datasheet, from which a causal model is made. */
@Schema(name = "DatasheetModel", description = """
        kind datasheet: Z = R0 + s L + 1 / (Q s^a), where the two loss figures and the capacitance fix R0, Q and a. A loss \
        figure may be absent or null.""")
record DatasheetInput(
        @Schema(description = "F, the series value at lossTangentFrequencyHz", example = "0.00022")
        @NotNull @Positive Double capacitanceF,
        @Schema(description = "ratio of ESR to |X|", example = "0.14") @PositiveOrZero Double lossTangent,
        @Schema(description = "Hz", example = "120") @Positive Double lossTangentFrequencyHz,
        @Schema(description = "ohm", example = "0.08") @PositiveOrZero Double resistanceOhm,
        @Schema(description = "Hz, where resistanceOhm is stated", example = "100000") @Positive Double resistanceFrequencyHz,
        @Schema(description = "H", example = "3e-9") @NotNull @PositiveOrZero Double inductanceH)
        implements ModelInput, CrossChecked {

    @Override
    public void check(String path, FieldProblems problems) {
        if (lossTangent != null && lossTangentFrequencyHz == null) {
            problems.add(FieldProblems.path(path, "lossTangentFrequencyHz"), "is required where lossTangent is given");
        }
        if (resistanceOhm != null && resistanceFrequencyHz == null) {
            problems.add(FieldProblems.path(path, "resistanceFrequencyHz"), "is required where resistanceOhm is given");
        }
    }
}
