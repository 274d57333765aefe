package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** What {@code ripple} answers. */
@Schema(name = "RippleAnswer")
record RippleAnswer(
        @Schema(description = "V, highest minus lowest of the exact waveform, both limits at a jump; not of the samples")
        double peakToPeakV,
        @Schema(description = "V, mean excluded") double rmsV,
        @Schema(description = "s, one switching period from the turn-on of phase 1") double[] timeS,
        @Schema(description = "V at each time, zero mean; at a jump the value just after it") double[] voltageV,
        @Schema(description = "A of one phase's inductor; null where the current is given by its corners", nullable = true)
        Double inductorPeakToPeakA,
        List<BranchHeat> branches,
        List<String> warnings) implements CalculationAnswer {

    /** Current and heat of one branch. */
    @Schema(name = "BranchRipple")
    record BranchHeat(
            String label,
            @Schema(description = "A of the whole branch") double rmsA,
            @Schema(description = "A of each part") double perPartRmsA,
            @Schema(description = "W in each part: its harmonics times Re Z of the part alone") double perPartDissipationW,
            @Schema(description = "W in the mountings of all parts together") double mountingDissipationW,
            @Schema(description = "W in the shared path") double sharedDissipationW) {
    }
}
