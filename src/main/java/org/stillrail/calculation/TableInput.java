package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** Impedance point by point. */
@Schema(name = "TableModel", description = """
        kind table: R and X point by point, linear over log f between points. Below and above the table R keeps its last value \
        and X goes on as the one element that the end point shows; that is said in warnings.""")
record TableInput(
        @Schema(description = "Hz, strictly increasing", example = "[1000, 10000, 100000]")
        @NotNull @Size(min = 2, max = Limits.TABLE_POINTS) double[] frequencyHz,
        @Schema(description = "ohm, 0 or above, one for each frequency", example = "[0.21, 0.2, 0.2]")
        @NotNull @Size(min = 2, max = Limits.TABLE_POINTS) double[] resistanceOhm,
        @Schema(description = "ohm, one for each frequency", example = "[-0.72, -0.07, -0.005]")
        @NotNull @Size(min = 2, max = Limits.TABLE_POINTS) double[] reactanceOhm) implements ModelInput, CrossChecked {

    int size() {
        return frequencyHz == null ? 0 : frequencyHz.length;
    }

    @Override
    public void check(String path, FieldProblems problems) {
        ListRules.increasing(FieldProblems.path(path, "frequencyHz"), frequencyHz, "Hz", problems);
        ListRules.sameLength(FieldProblems.path(path, "resistanceOhm"), resistanceOhm, "frequencyHz", frequencyHz, problems);
        ListRules.sameLength(FieldProblems.path(path, "reactanceOhm"), reactanceOhm, "frequencyHz", frequencyHz, problems);
        ListRules.notNegative(FieldProblems.path(path, "resistanceOhm"), resistanceOhm, problems);
    }
}
