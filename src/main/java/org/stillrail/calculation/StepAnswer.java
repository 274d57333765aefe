package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** What {@code step} answers; entry k of every array belongs to {@code timeS[k]}. */
@Schema(name = "StepAnswer")
record StepAnswer(
        @Schema(description = "s, from 0 to durationS") double[] timeS,
        @Schema(description = "V from the set-point") double[] deviationV,
        @Schema(description = "A of all phases together") double[] inductorA,
        @Schema(description = "V, largest fall of the continuous solution, 0 or positive") double undershootV,
        @Schema(description = "V, largest rise of the continuous solution, 0 or positive") double overshootV,
        @Schema(description = "s; null where there is no fall", nullable = true) Double undershootAtS,
        @Schema(description = "s; null where there is no rise", nullable = true) Double overshootAtS,
        @Schema(description = "s; null if never, or without settleBandV", nullable = true) Double settledAtS,
        @Schema(description = "%, of the worst branch; null where the bank is exact", nullable = true) Double fitErrorPercent,
        List<String> warnings) implements CalculationAnswer {
}
