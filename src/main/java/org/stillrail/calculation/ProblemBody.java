package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** A refusal as RFC 9457 describes it, for the published description only. */
@Schema(name = "Problem", description = "A refusal as RFC 9457 describes it.")
record ProblemBody(
        @Schema(description = "What kind of problem; about:blank where the status says it all", example = "about:blank") String type,
        @Schema(example = "Bad Request") String title,
        @Schema(example = "400") int status,
        @Schema(description = "In words") String detail,
        @Schema(description = "The path that was called") String instance,
        @Schema(description = "Every wrong field; with status 400 only") List<WrongField> errors) {

    /** One wrong field. */
    @Schema(name = "WrongField")
    record WrongField(
            @Schema(description = "JSON path, or body for the request as a whole", example = "bank.branches[0].count") String field,
            @Schema(example = "must be a whole number") String message) {
    }
}
