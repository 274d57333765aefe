package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** What {@code sweep} answers. */
@Schema(name = "SweepAnswer")
record SweepAnswer(
        @Schema(description = "Hz, ascending") double[] frequencyHz,
        @Schema(description = "Re Z, ohm") double[] resistanceOhm,
        @Schema(description = "Im Z, ohm") double[] reactanceOhm,
        @Schema(description = "How many") int points,
        @Schema(description = "ohm; null where the data needed no reference", nullable = true) Double referenceOhm,
        @Schema(description = "What was recognised") String format,
        List<String> warnings) implements CalculationAnswer {
}
