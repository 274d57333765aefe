package org.stillrail.electrical.mounting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Closed forms of vias and lands against a worked example, limits, and a field calculation of our own. */
class MountingInductanceTest {

    private static final double MU0 = 4e-7 * Math.PI;
    private static final Source EVALUATED = Source.independent("the closed form evaluated in Python");

    /** 0.157 cm long, 0.041 cm wide. */
    @Test
    void singleViaOfTheWorkedExample() {
        double h = ViaInductance.aloneH(0.157e-2, 0.041e-2);
        Check.that(Topic.MOUNTING, "Single via of 1.57 mm by 0.41 mm").source(Source.seenSecondHand("worked example on a public help page, printed to two figures"))
                .expected("H", 1.2e-9).absolute(0.05e-9).got(h);
        Check.that(Topic.MOUNTING, "Single via of 1.57 mm by 0.41 mm, full precision").source(EVALUATED).expected("H", 1.1708959833258617e-9)
                .relative(1e-9).got(h);
    }

    /** The same formula in its own units: 0.043 inch long, 0.020 inch wide. */
    @Test
    void singleViaInInches() {
        double inch = 0.0254;
        Check.that(Topic.MOUNTING, "Single via of 0.043 inch by 0.020 inch: 5.08 nH/inch h (ln(4 h / d) + 1)")
                .source(Source.seenSecondHand("H. Johnson, M. Graham, High-Speed Digital Design, 1993, in its own units")).expected("H", 5.08e-9 * 0.043 * (Math.log(4 * 0.043 / 0.020) + 1))
                .relative(1e-9).got(ViaInductance.aloneH(0.043 * inch, 0.020 * inch));
    }

    @Test
    void pairTendsToTheLogarithmFarApart() {
        double inch = 0.0254;
        Check.that(Topic.MOUNTING, "Planes an inch apart between two vias, where the logarithm is 1: mu0 / pi an inch")
                .source(Source.seen("H. Johnson, column in EDN: 10.16 nH an inch")).expected("H", 10.16e-9).relative(1e-9)
                .got(ViaInductance.planeSpreadingH(inch, 0.01 * inch, 0.01 * inch * Math.E / 2));
        Check.that(Topic.MOUNTING, "Pair of vias 1 mm long, 0.3 mm wide, 1 mm apart: mu0 h / pi arcosh(s / d)").source(EVALUATED)
                .expected("H", 7.495280970109658e-10).relative(1e-9).got(ViaInductance.pairH(1e-3, 0.3e-3, 1e-3));
        Check.that(Topic.MOUNTING, "Pair of vias far apart: mu0 h / pi ln(2 s / d)").source(Source.fromMemory("textbooks of fields, two thin wires"))
                .expected("H", MU0 * 1e-3 / Math.PI * Math.log(200)).relative(1e-5).got(ViaInductance.pairH(1e-3, 0.3e-3, 30e-3));
        Check.that(Topic.MOUNTING, "Planes 0.1 mm apart between two vias of 0.3 mm, 20 mm apart").source(EVALUATED)
                .expected("H", 1.9571409033759493e-10).relative(1e-9).got(ViaInductance.planeSpreadingH(0.1e-3, 0.3e-3, 20e-3));
    }

    @Test
    void viaToTheGroundOfAMicrostrip() {
        Check.that(Topic.MOUNTING, "Via of 0.5 mm and radius 0.15 mm to the ground of a microstrip")
                .source(Source.seenSecondHand("M. E. Goldfarb, R. A. Pucel, IEEE Microwave and Guided Wave Letters 1, 1991; evaluated in Python"))
                .expected("H", 8.028504957619484e-11).relative(1e-9).got(ViaInductance.microstripGroundH(0.5e-3, 0.15e-3));
        assertThatThrownBy(() -> ViaInductance.microstripGroundH(0.1e-3, 0.11e-3)).hasMessageContaining("radiusM");
    }

    @Test
    void viasThatTouchAreRefused() {
        assertThatThrownBy(() -> ViaInductance.pairH(1e-3, 0.3e-3, 0.3e-3)).hasMessageContaining("spacingM");
        assertThatThrownBy(() -> ViaInductance.planeSpreadingH(1e-4, 0.3e-3, 0.15e-3)).hasMessageContaining("distanceM");
    }

    /** A strip of no thickness over a plane, in H for each metre. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 5.56050808803314e-7", "1, 4.2170475945819874e-7", "2, 2.969680578200072e-7", "5, 1.646663573119004e-7",
        "10, 9.680330683773161e-8"})
    void landAgreesWithTheFieldOfAStrip(double widthOverHeight, double perMetre) {
        Check.that(Topic.MOUNTING, "Land over a plane, width over height " + widthOverHeight)
                .source(Source.independent("field of a strip over a plane, its charge found on 1200 pieces in numpy, mu0 epsilon0 / C'"))
                .expected("H/m", perMetre).relative(1e-3).got(LandInductance.overPlaneH(1, widthOverHeight * 1e-3, 1e-3));
    }

    @Test
    void wideLandIsAParallelPlate() {
        Check.that(Topic.MOUNTING, "Wide land of 10 mm by 0.5 m, 1 mm over a plane: mu0 h l / w").source(Source.fromMemory("parallel plates, textbooks of fields"))
                .expected("H", MU0 * 1e-3 / 0.5 * 1e-2).relative(0.02).got(LandInductance.overPlaneH(1e-2, 0.5, 1e-3));
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
        Check.that(Topic.MOUNTING, "Copper of two via pairs and a land: resistivity times length over section").source(Source.fromMemory("IACS copper, 1.7241e-8 ohm m"))
                .expected("ohm", copper).relative(1e-9).got(estimate.path().resistanceOhm());
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
