package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** What {@code impedance} answers; entry k of every array belongs to {@code frequencyHz[k]}. */
@Schema(name = "ImpedanceAnswer")
record ImpedanceAnswer(
        @Schema(description = "Hz") double[] frequencyHz,
        @Schema(description = "Re Z of the bank, ohm") double[] resistanceOhm,
        @Schema(description = "Im Z of the bank, ohm") double[] reactanceOhm,
        @Schema(description = "|Z| of the bank, ohm") double[] magnitudeOhm,
        @Schema(description = "Phase of the bank's Z, degrees") double[] phaseDeg,
        List<BranchImpedance> branches,
        @Schema(description = "Every local minimum and maximum of the bank's |Z| strictly inside the grid") List<ExtremumFound> extrema,
        List<String> warnings) implements CalculationAnswer {

    /** One branch on the same grid. */
    @Schema(name = "BranchImpedance")
    record BranchImpedance(
            String label,
            @Schema(description = "Re Z of the branch, ohm") double[] resistanceOhm,
            @Schema(description = "Im Z of the branch, ohm") double[] reactanceOhm,
            @Schema(description = "|Ibranch / Itotal|; may exceed 1, and shares do not add to 1") double[] currentShare,
            @Schema(description = "Phase of Ibranch / Itotal, degrees") double[] currentSharePhaseDeg) {
    }

    /** One extremum. */
    @Schema(name = "Extremum")
    record ExtremumFound(
            @Schema(allowableValues = {"minimum", "maximum"}) String kind,
            @Schema(description = "Hz") double frequencyHz,
            @Schema(description = "ohm; null where nothing damps a maximum", nullable = true) Double magnitudeOhm,
            @Schema(description = "Q = (f0 / 2) |d phase / df|, phase in radians; null where nothing damps", nullable = true)
            Double qualityFactor) {
    }
}
