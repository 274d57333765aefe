package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Positive;
import jakarta.validation.constraints.Size;

/** An integrator with real zeros and poles. */
@Schema(name = "Compensator", description = "C(s) = gain / s product(1 + s / wz) / product(1 + s / wp).")
record CompensatorInput(
        @Schema(description = "rad/s, any divider included", example = "20000") @NotNull @Positive Double gain,
        @Schema(description = "Hz, none where absent; at most one more than poles", example = "[8000]")
        @Size(min = 0, max = Limits.COMPENSATOR_ROOTS) double[] zerosHz,
        @Schema(description = "Hz, none where absent", example = "[200000]")
        @Size(min = 0, max = Limits.COMPENSATOR_ROOTS) double[] polesHz) implements CrossChecked {

    @Override
    public void check(String path, FieldProblems problems) {
        ListRules.positive(FieldProblems.path(path, "zerosHz"), zerosHz, problems);
        ListRules.positive(FieldProblems.path(path, "polesHz"), polesHz, problems);
        int zeros = zerosHz().length;
        int poles = polesHz().length;
        if (zeros > poles + 1) {
            problems.add(FieldProblems.path(path, "zerosHz"), "has " + zeros + " entries for " + poles
                    + " poles; at most one more than polesHz, the integrator being a pole too");
        }
    }

    @Override
    public double[] zerosHz() {
        return zerosHz == null ? new double[0] : zerosHz;
    }

    @Override
    public double[] polesHz() {
        return polesHz == null ? new double[0] : polesHz;
    }
}
