package org.stillrail.sweepfile.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ScatteringImpedance;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Error growth, reference 50 ohm. */
class ImpedanceUncertaintyTest {

    @ParameterizedTest
    @CsvSource({
        "0.01,2501.0001,1.0004,10001", "1,26.01,1.04,101", "25,2.25,2,5", "50,2,3,3", "100,2.25,5,2", "1000,11.025,41,1.1"
    })
    void growthOfErrors(double ohm, double reflection, double shunt, double series) {
        Complex z = new Complex(ohm, 0);
        // SZ-04
        Check.that(Topic.FILES, "Error growth at " + ohm + " ohm: reflection, shunt-through, series-through")
                .source(Source.fromMemory("derivative of the fixture's formula by hand and by central differences in Python"))
                .expected("", reflection, shunt, series).relative(1e-9)
                .got(ErrorGrowth.factor(Fixture.REFLECTION, z, 50), ErrorGrowth.factor(Fixture.SHUNT_THROUGH, z, 50),
                        ErrorGrowth.factor(Fixture.SERIES_THROUGH, z, 50));
    }

    /** A small error of the measured value in any direction moves Z by what the formula says, for complex Z too. */
    @ParameterizedTest
    @EnumSource(value = Fixture.class, names = {"REFLECTION", "SHUNT_THROUGH", "SERIES_THROUGH"})
    void theErrorIsADiscAroundTheImpedance(Fixture fixture) {
        Complex z = new Complex(0.3, -7);
        Complex s = ScatteringImpedance.scattering(fixture, z, 50);
        double size = fixture == Fixture.REFLECTION ? 1e-6 : 1e-6 * s.magnitude();
        double expected = ErrorGrowth.errorOhm(fixture, z, 50, new InstrumentAccuracy(1e-6, 1e-6, 0, 0));
        for (int degrees = 0; degrees < 360; degrees += 45) {
            Complex moved = ScatteringImpedance.impedance(fixture, s.plus(Complex.polar(size, Math.toRadians(degrees))), 50);
            assertThat(moved.minus(z).magnitude()).isCloseTo(expected, Percentage.withPercentage(0.1));
        }
    }

    /** By hand: |1 j + 50|^2 / (2 * 50) * 0.001 = 25.01 mohm, twelve times the 2 mohm. */
    @Test
    void twoMilliohmUnderOneOhmIsNotKnownFromAReflection() {
        Curve curve = new Curve(FrequencyGrid.of(1e6), new double[] {0.002}, new double[] {1});
        InstrumentAccuracy accuracy = new InstrumentAccuracy(0.001, 0, 0, 0);
        ImpedanceUncertainty uncertainty = ImpedanceUncertainty.of(curve, Fixture.REFLECTION, 50, accuracy);
        Check.that(Topic.FILES, "2 mohm under 1 ohm of reactance by reflection with an error of 0.001: error").source(Source.independent("by hand"))
                .expected("ohm", 0.02501).absolute(1e-5).got(uncertainty.errorOhm(0));
        assertThat(uncertainty.relativeMagnitude(0)).isCloseTo(0.025, Offset.offset(1e-4));
        assertThat(uncertainty.isResistanceKnown(0)).isFalse();
        assertThat(uncertainty.lowestResistanceOhm()[0]).isNegative();
        // The same ESR at series resonance in a shunt-through is known to its instrument's per cent.
        Curve resonance = new Curve(FrequencyGrid.of(1e6), new double[] {0.002}, new double[] {0});
        ImpedanceUncertainty shunt = ImpedanceUncertainty.of(resonance, Fixture.SHUNT_THROUGH, 50, new InstrumentAccuracy(0, 0.01, 0, 0));
        assertThat(shunt.relativeResistance(0)).isCloseTo(0.01, Offset.offset(1e-5));
    }

    /** By hand: 1 mohm gives S21 = 4e-5; a floor of 1e-5 is a quarter of it. */
    @Test
    void theFloorOfTheReceiverLimitsSmallImpedances() {
        Curve curve = new Curve(FrequencyGrid.of(1e6), new double[] {0.001}, new double[] {0});
        ImpedanceUncertainty shunt = ImpedanceUncertainty.of(curve, Fixture.SHUNT_THROUGH, 50, new InstrumentAccuracy(0, 0, 1e-5, 0));
        assertThat(shunt.relativeMagnitude(0)).isCloseTo(0.25, Offset.offset(1e-4));
    }

    @Test
    void bandsRunOverTheGrid() {
        Curve curve = new Curve(FrequencyGrid.of(1, 2, 3, 4, 5), new double[] {1, 1, 0.001, 0.001, 1}, new double[] {0, 0, 1, 1, 0});
        ImpedanceUncertainty analyser = ImpedanceUncertainty.of(curve, Fixture.IMPEDANCE, 50, new InstrumentAccuracy(0, 0, 0, 0.01));
        assertThat(analyser.unknownResistanceBands()).containsExactly(new FrequencyBand(3, 4));
        assertThat(analyser.trustedBands(0.05)).containsExactly(new FrequencyBand(1, 5));
        assertThat(analyser.trustedBands(0.005)).isEmpty();
        assertThat(analyser.lowestMagnitudeOhm()[0]).isCloseTo(0.99, Offset.offset(1e-12));
        assertThat(analyser.highestMagnitudeOhm()[0]).isCloseTo(1.01, Offset.offset(1e-12));
    }

    /** By hand from (Z + R)^2 / (2 Z R) = 10: Z = R (9 -+ sqrt 80). From 1 + 2 Z / R = 10: Z = 225. From 1 + 2 R / Z = 10: Z = 100 / 9. */
    @Test
    void windowsOfTheFixtures() {
        InstrumentAccuracy accuracy = new InstrumentAccuracy(0.01, 0.01, 0, 0);
        ImpedanceWindow reflection = ImpedanceWindow.of(Fixture.REFLECTION, 50, accuracy, 0.1).orElseThrow();
        Source byHand = Source.independent("error growth solved for Z by hand");
        Check.that(Topic.FILES, "Reflection with errors of 1 %, Z known to 10 %: from and to").source(byHand)
                .expected("ohm", 50 * (9 - Math.sqrt(80)), 50 * (9 + Math.sqrt(80))).relative(1e-8).got(reflection.lowestOhm(), reflection.highestOhm());
        ImpedanceWindow shunt = ImpedanceWindow.of(Fixture.SHUNT_THROUGH, 50, accuracy, 0.1).orElseThrow();
        assertThat(shunt.lowestOhm()).isEqualTo(ImpedanceWindow.LEAST_OHM);
        Check.that(Topic.FILES, "Shunt-through with errors of 1 %, Z known to 10 %: to").source(byHand).expected("ohm", 225).relative(1e-8).got(shunt.highestOhm());
        ImpedanceWindow series = ImpedanceWindow.of(Fixture.SERIES_THROUGH, 50, accuracy, 0.1).orElseThrow();
        Check.that(Topic.FILES, "Series-through with errors of 1 %, Z known to 10 %: from").source(byHand).expected("ohm", 100.0 / 9).relative(1e-8)
                .got(series.lowestOhm());
        assertThat(ImpedanceWindow.of(Fixture.REFLECTION, 50, accuracy, 0.019)).isEmpty();
    }

    @Test
    void accuraciesOutOfRangeAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new InstrumentAccuracy(-0.1, 0, 0, 0)).withMessageContaining("reflection");
        assertThatIllegalArgumentException().isThrownBy(() -> new InstrumentAccuracy(0, 0, Double.NaN, 0)).withMessageContaining("transmissionFloor");
        assertThat(InstrumentAccuracy.linear(-40)).isCloseTo(0.01, Offset.offset(1e-15));
    }
}
