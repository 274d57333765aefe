package org.stillrail.calculation;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.stillrail.electrical.curve.Complex;

/** What {@code fit} answers: {@code constant + proportional s + sum of residue / (s - pole)}, s in rad/s. */
@Schema(name = "FitAnswer")
record FitAnswer(
        @Schema(description = "The quantity that the function stands for", allowableValues = {"impedance", "admittance"}) String of,
        @Schema(description = "rad/s, conjugates spelt out; 0 for a part that blocks DC") List<ComplexNumber> polesRadPerS,
        @Schema(description = "One for each pole, in the unit of the quantity times rad/s") List<ComplexNumber> residues,
        @Schema(description = "In the unit of the quantity") double constant,
        @Schema(description = "In the unit of the quantity times s") double proportional,
        @Schema(description = "%, largest complex error over |Z| at the table's points") double worstRelativeErrorPercent,
        @Schema(description = "%, root mean square of the same") double rmsRelativeErrorPercent,
        @Schema(description = "%, largest error of Re Z over Re Z; null where the table has next to no resistance", nullable = true)
        Double worstResistanceErrorPercent,
        @Schema(description = "True only where an exact test found Re Z nowhere negative") boolean passive,
        boolean stable,
        List<String> warnings) implements CalculationAnswer {

    /** A complex number. */
    @Schema(name = "ComplexNumber")
    record ComplexNumber(double re, double im) {

        static ComplexNumber of(Complex value) {
            return new ComplexNumber(value.re(), value.im());
        }
    }
}
