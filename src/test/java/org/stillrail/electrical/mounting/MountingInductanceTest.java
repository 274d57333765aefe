package org.stillrail.electrical.mounting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Closed forms of vias and lands against a worked example, limits, and a field calculation of our own. */
class MountingInductanceTest {

    private static final double MU0 = 4e-7 * Math.PI;

    /** Worked example on a public help page, seen second-hand: 0.157 cm long, 0.041 cm wide, 1.2 nH. */
    @Test
    void singleViaOfTheWorkedExample() {
        double h = ViaInductance.aloneH(0.157e-2, 0.041e-2);
        assertThat(h).isCloseTo(1.2e-9, within(0.05e-9));
        assertThat(h).isCloseTo(1.1708959833258617e-9, withPercentage(1e-9));
    }

    /** The same formula in its own units: 0.043 inch long, 0.020 inch wide. */
    @Test
    void singleViaInInches() {
        double inch = 0.0254;
        assertThat(ViaInductance.aloneH(0.043 * inch, 0.020 * inch))
                .isCloseTo(5.08e-9 * 0.043 * (Math.log(4 * 0.043 / 0.020) + 1), withPercentage(1e-9));
    }

    /** mu0 / pi is 10.16 nH an inch, as the EDN column writes it. */
    @Test
    void pairTendsToTheLogarithmFarApart() {
        double inch = 0.0254;
        assertThat(ViaInductance.planeSpreadingH(inch, 0.01 * inch, 0.01 * inch * Math.E / 2)).isCloseTo(10.16e-9, withPercentage(1e-9));
        assertThat(ViaInductance.pairH(1e-3, 0.3e-3, 1e-3)).isCloseTo(7.495280970109658e-10, withPercentage(1e-9));
        assertThat(ViaInductance.pairH(1e-3, 0.3e-3, 30e-3)).isCloseTo(MU0 * 1e-3 / Math.PI * Math.log(200), withPercentage(1e-3));
        assertThat(ViaInductance.planeSpreadingH(0.1e-3, 0.3e-3, 20e-3)).isCloseTo(1.9571409033759493e-10, withPercentage(1e-9));
    }

    /** Formula of Goldfarb and Pucel, evaluated in Python. */
    @Test
    void viaToTheGroundOfAMicrostrip() {
        assertThat(ViaInductance.microstripGroundH(0.5e-3, 0.15e-3)).isCloseTo(8.028504957619484e-11, withPercentage(1e-9));
        assertThatThrownBy(() -> ViaInductance.microstripGroundH(0.1e-3, 0.11e-3)).hasMessageContaining("radiusM");
    }

    @Test
    void viasThatTouchAreRefused() {
        assertThatThrownBy(() -> ViaInductance.pairH(1e-3, 0.3e-3, 0.3e-3)).hasMessageContaining("spacingM");
        assertThatThrownBy(() -> ViaInductance.planeSpreadingH(1e-4, 0.3e-3, 0.15e-3)).hasMessageContaining("distanceM");
    }

    /** Against a strip of no thickness over a plane, its charge found on 1200 pieces in numpy (mu0 epsilon0 / C'), H for each metre. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 5.56050808803314e-7", "1, 4.2170475945819874e-7", "2, 2.969680578200072e-7", "5, 1.646663573119004e-7",
        "10, 9.680330683773161e-8"})
    void landAgreesWithTheFieldOfAStrip(double widthOverHeight, double perMetre) {
        assertThat(LandInductance.overPlaneH(1, widthOverHeight * 1e-3, 1e-3)).isCloseTo(perMetre, withPercentage(0.1));
    }

    @Test
    void wideLandIsAParallelPlate() {
        assertThat(LandInductance.overPlaneH(1e-2, 0.5, 1e-3)).isCloseTo(MU0 * 1e-3 / 0.5 * 1e-2, withPercentage(2));
        assertThat(LandInductance.overPlaneH(0, 1e-3, 1e-3)).isZero();
    }

    @Test
    void mountingIsLandAndVias() {
        MountingGeometry geometry = new MountingGeometry(0.2e-3, 1.5e-3, 1e-3, 2, 0.25e-3, 1e-3, 25e-6);
        MountingEstimate estimate = MountingEstimate.of(geometry);
        double via = MU0 * 0.2e-3 / Math.PI * Math.log(4 + Math.sqrt(15)) / 2;
        assertThat(estimate.viaH()).isCloseTo(via, withPercentage(1e-9));
        assertThat(estimate.landH()).isCloseTo(1.5e-3 * 1.646663573119004e-7, withPercentage(0.1));
        assertThat(estimate.path().inductanceH()).isCloseTo(estimate.viaH() + estimate.landH(), withPercentage(1e-9));
        // 2 x 0.2 mm of wall pi x 0.225 mm x 25 um, two in parallel; 1.5 mm of 1 mm x 25 um.
        double copper = 1.7241e-8 * (0.4e-3 / (Math.PI * 0.225e-3 * 25e-6) / 2 + 1.5e-3 / (1e-3 * 25e-6));
        assertThat(estimate.path().resistanceOhm()).isCloseTo(copper, withPercentage(1e-9));
        assertThat(estimate.notes()).anyMatch(note -> note.contains("none saw another")).anyMatch(note -> note.contains("three times"));
    }

    @Test
    void moreViasAndALowerPlaneMeanLess() {
        double one = inductance(0.4e-3, 1);
        assertThat(inductance(0.4e-3, 2)).isLessThan(one);
        assertThat(inductance(0.1e-3, 1)).isLessThan(one);
        assertThatThrownBy(() -> inductance(0.4e-3, 0)).hasMessageContaining("viaPairs");
    }

    private static double inductance(double heightM, int pairs) {
        return MountingEstimate.of(new MountingGeometry(heightM, 1e-3, 1e-3, pairs, 0.25e-3, 0.8e-3, null)).path().inductanceH();
    }
}
