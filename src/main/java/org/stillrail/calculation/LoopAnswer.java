package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** What {@code loop} answers; entry k of every array belongs to {@code frequencyHz[k]}. */
@Schema(name = "LoopAnswer")
record LoopAnswer(
        @Schema(description = "Hz") double[] frequencyHz,
        @Schema(description = "20 log10 |T|") double[] gainDb,
        @Schema(description = "degrees, continuous from -90 (voltage mode) or -180 (current mode) at 0 Hz") double[] phaseDeg,
        @Schema(description = "ohm, |Zopen / (1 + T)|") double[] closedImpedanceOhm,
        @Schema(description = "degrees, least 180 + phase over the crossings of |T| = 1; null without one", nullable = true)
        Double phaseMarginDeg,
        @Schema(description = "Hz, the crossing that has it; null without one", nullable = true) Double crossoverHz,
        @Schema(description = "dB, least -20 log10 |T| where the phase passes -180 with |T| < 1; null where it never does",
                nullable = true) Double gainMarginDb,
        @Schema(description = "Largest 1 / |1 + T| on the grid") double sensitivityPeak,
        @Schema(description = "No closed-loop pole in the right half plane") boolean stable,
        @Schema(description = "ohm, Re Zbank at the crossover; null without one", nullable = true) Double esrAtCrossoverOhm,
        @Schema(description = "ohm, Re Zbank at the switching frequency", nullable = true) Double esrAtSwitchingOhm,
        @Schema(description = "As given or as placed") CompensatorFound compensator,
        List<String> warnings) implements CalculationAnswer {

    /** The compensator that was used. */
    @Schema(name = "CompensatorFound")
    record CompensatorFound(
            @Schema(description = "rad/s") double gain,
            @Schema(description = "Hz") List<Double> zerosHz,
            @Schema(description = "Hz") List<Double> polesHz) {
    }
}
