package org.stillrail.electrical.capacitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** The figures that went in must come out of the model again: the definition of the model, no outside source needed. */
class DatasheetModelTest {

    /** Wet aluminium, polymer, ceramic, tantalum, film; and a resistance below the loss tangent's frequency. */
    @ParameterizedTest
    @CsvSource({
        "220e-6, 0.14,   120,  0.2,    100e3, 15e-9",
        "330e-6, 0.10,   120,  0.011,  100e3, 3e-9",
        "10e-6,  0.05,   1e3,  0.004,  1e6,   6e-10",
        "47e-6,  0.08,   120,  0.15,   100e3, 2e-9",
        "1e-6,   0.001,  1e3,  1e-2,   100e3, 2e-8",
        "100e-6, 0.02,   100e3, 0.02,  1e3,   1e-9"})
    void meetsCapacitanceAndBothLossFigures(double c, double tangent, double f1, double r, double f2, double l) {
        DatasheetModel model = DatasheetModel.of(new LossFigures(c, tangent, f1, r, f2), l);
        double w1 = 2 * Math.PI * f1;
        assertThat(model.warnings()).isEmpty();
        assertThat(-1 / (w1 * (model.at(f1).reactanceOhm() - w1 * l))).isCloseTo(c, withPercentage(1e-9));
        assertThat(model.at(f1).resistanceOhm()).isCloseTo(tangent / (w1 * c), withPercentage(1e-8));
        assertThat(model.at(f2).resistanceOhm()).isCloseTo(r, withPercentage(1e-8));
        assertThat(model.constantPhaseExponent()).isBetween(0.5, 1.0);
    }

    /** R0 and the exponent from three figures. */
    @ParameterizedTest
    @CsvSource({
        "220e-6, 0.14, 120, 0.2, 100e3, 0.19883, 0.932123",
        "330e-6, 0.10, 120, 0.011, 100e3, 0.01029, 0.938163",
        "10e-6, 0.05, 1e3, 0.004, 1e6, 0.003013, 0.968316",
        "100e-6, 0.02, 100e3, 0.02, 1e3, 0.0001117, 0.991737"})
    void solvesTheThreeUnknowns(double c, double tangent, double f1, double r, double f2, double r0, double exponent) {
        DatasheetModel model = DatasheetModel.of(new LossFigures(c, tangent, f1, r, f2), 1e-9);
        String name = "Datasheet model of %s uF, tan d %s at %s Hz, %s ohm at %s Hz".formatted((float) (1e6 * c), tangent, f1, r, f2);
        Source brent = Source.independent("three equations solved by Brent's method in Python");
        Check.that(Topic.MODELS, name + ": exponent of the constant-phase element").source(brent).expected("", exponent).absolute(1e-6)
                .got(model.constantPhaseExponent());
        Check.that(Topic.MODELS, name + ": R0").source(brent).expected("ohm", r0).relative(1e-3).got(model.resistanceOhm());
    }

    @Test
    void lossTangentIsDroppedWhereTheSeriesResistanceWouldBeNegative() {
        // All loss in the dielectric would make 3.2 mohm at 1 MHz of a loss tangent of 0.02; 0.1 mohm are claimed.
        DatasheetModel model = DatasheetModel.of(new LossFigures(1e-6, 0.02, 1e3, 1e-4, 1e6), 0);
        assertThat(model.resistanceOhm()).isZero();
        assertThat(model.at(1e6).resistanceOhm()).isCloseTo(1e-4, withPercentage(1e-8));
        assertThat(model.warnings()).singleElement().asString().contains("loss tangent at 1 kHz was dropped");
    }

    @Test
    void resistanceIsDroppedWhereItIsTheLowerFrequencyFigure() {
        DatasheetModel model = DatasheetModel.of(new LossFigures(1e-6, 1e-5, 1e5, 50.0, 1e3), 0);
        assertThat(model.resistanceOhm()).isZero();
        assertThat(model.at(1e5).resistanceOhm()).isCloseTo(1e-5 / (2 * Math.PI * 0.1), withPercentage(1e-8));
        assertThat(model.warnings()).singleElement().asString().contains("resistance at 1 kHz was dropped");
    }

    @Test
    void resistanceThatRisesWithFrequencyKeepsTheHigherFrequencyFigure() {
        DatasheetModel model = DatasheetModel.of(new LossFigures(1e-6, 0.001, 1e3, 1.0, 1e6), 0);
        assertThat(model.at(1e6).resistanceOhm()).isCloseTo(1, within(1e-12));
        assertThat(model.constantPhaseExponent()).isEqualTo(1);
        assertThat(model.warnings()).singleElement().asString().contains("loss tangent at 1 kHz was dropped");
    }

    @Test
    void eachFigureMayBeAbsent() {
        DatasheetModel onlyTangent = DatasheetModel.of(new LossFigures(1e-6, 0.02, 1e3, null, null), 0);
        assertThat(onlyTangent.at(1e3).resistanceOhm() / -onlyTangent.at(1e3).reactanceOhm()).isCloseTo(0.02, withPercentage(1e-9));
        assertThat(onlyTangent.at(1e6).resistanceOhm() / -onlyTangent.at(1e6).reactanceOhm()).isCloseTo(0.02, withPercentage(1e-9));
        assertThat(onlyTangent.warnings()).hasSize(1);
        DatasheetModel onlyResistance = DatasheetModel.of(new LossFigures(1e-6, null, 1e3, 0.3, 1e5), 1e-9);
        assertThat(onlyResistance.at(123).resistanceOhm()).isEqualTo(0.3);
        DatasheetModel neither = DatasheetModel.of(new LossFigures(1e-6, null, 1e3, null, null), 1e-9);
        assertThat(neither.at(1e4).resistanceOhm()).isZero();
        assertThat(neither.at(1e4).reactanceOhm())
                .isCloseTo(2 * Math.PI * 1e4 * 1e-9 - 1 / (2 * Math.PI * 1e4 * 1e-6), withPercentage(1e-10));
    }

    @Test
    void badFiguresAreRefusedByName() {
        assertThatThrownBy(() -> new LossFigures(0, 0.1, 120, null, null)).hasMessageContaining("capacitanceF");
        assertThatThrownBy(() -> new LossFigures(1e-6, -0.1, 120, null, null)).hasMessageContaining("lossTangent");
        assertThatThrownBy(() -> new LossFigures(1e-6, null, 120, 0.1, null)).hasMessageContaining("resistanceFrequencyHz");
    }

    @Test
    void gridAndSingleFrequencyAgreeAndSlopesMatch() {
        DatasheetModel model = DatasheetModel.of(new LossFigures(220e-6, 0.14, 120, 0.2, 100e3), 15e-9);
        FrequencyGrid grid = FrequencyGrid.logSpaced(10, 1e8, 50);
        double[] r = new double[50];
        double[] x = new double[50];
        model.addImpedanceTo(grid, r, x);
        for (int i = 0; i < 50; i++) {
            assertThat(r[i]).isCloseTo(model.at(grid.hz(i)).resistanceOhm(), withPercentage(1e-10));
            assertThat(x[i]).isCloseTo(model.at(grid.hz(i)).reactanceOhm(), withPercentage(1e-8));
            Slopes.check(model, grid.hz(i));
        }
    }
}
