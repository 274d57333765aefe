package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/** Equal parts, each with its mounting, then one shared path. */
@Schema(name = "Branch", description = """
        Equal parts, each with its own mounting, then one path that they share: \
        Z = (Zpart + Zmounting) / count + Zshared. Exactly one of part and model is given.""")
record BranchInput(
        @Schema(description = "Name of the branch in the answer; 'branch 1' and so on where absent", example = "bulk")
        @Size(min = 0, max = 200) String label,
        @Schema(description = "Number of equal parts", example = "2")
        @NotNull @Min(1) Integer count,
        @Schema(description = "Part number of a part in the library, taken at the operating point")
        @Size(min = 1, max = 200) String part,
        @Valid ModelInput model,
        @Schema(description = "In series with each part; none where absent") @Valid SeriesPathInput mounting,
        @Schema(description = "In series once with the whole branch; none where absent") @Valid SeriesPathInput shared)
        implements CrossChecked {

    @Override
    public void check(String path, FieldProblems problems) {
        if (part != null && model != null) {
            problems.add(path, "has both part and model; give one of them");
        } else if (part == null && model == null) {
            problems.add(path, "has neither part nor model; give one of them");
        }
    }
}
