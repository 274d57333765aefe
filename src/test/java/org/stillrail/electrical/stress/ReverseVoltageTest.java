package org.stillrail.electrical.stress;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** What parts bear backwards. */
class ReverseVoltageTest {

    /** Share of the rated voltage for low ratings, a voltage for high ones; half way between two temperatures the mean of both. */
    @ParameterizedTest
    @CsvSource({
        "6.3, 25, 0.63", "35, 25, 1", "6.3, 85, 0.189", "35, 85, 0.5", "6.3, 125, 0.063", "35, 125, 0.1", "6.3, 55, 0.4095",
        "6.3, -55, 0.63", "35, 126, 0"})
    void solidTantalumBearsALittle(double ratedV, double temperatureC, double allowedV) {
        assertThat(kept(Technology.TANTALUM_MNO2, ratedV, null, temperatureC, -allowedV * 0.999)).isTrue();
        assertThat(kept(Technology.TANTALUM_MNO2, ratedV, null, temperatureC, -allowedV * 1.001 - 1e-9)).isFalse();
        Check.that(Topic.STRESS, "Solid tantalum of %s V at %s degC: reverse voltage that it bears".formatted(ratedV, temperatureC))
                .source(Source.seenSecondHand("figures on a public page; between temperatures a straight line")).expected("V", allowedV).absolute(1e-9)
                .got(ReverseVoltage.of(Technology.TANTALUM_MNO2, ratedV, null, temperatureC, 0).allowedV());
    }

    @ParameterizedTest
    @EnumSource(names = {"WET_ALUMINIUM", "POLYMER_ALUMINIUM", "HYBRID", "TANTALUM_POLYMER", "DOUBLE_LAYER"})
    void otherPolarPartsBearNone(Technology technology) {
        assertThat(kept(technology, 16.0, null, 25, 0)).isTrue();
        assertThat(kept(technology, 16.0, null, 25, -1e-6)).isFalse();
    }

    @Test
    void datasheetHasTheLastWord() {
        assertThat(kept(Technology.WET_ALUMINIUM, 16.0, 1.0, 25, -1)).isTrue();
        assertThat(kept(Technology.WET_ALUMINIUM, 16.0, 1.0, 25, -1.01)).isFalse();
        assertThat(kept(Technology.TANTALUM_MNO2, 35.0, 0.0, 25, -0.5)).isFalse();
    }

    @Test
    void partsWithoutPolarityBearTheirRatedVoltageEitherWay() {
        assertThat(kept(Technology.CERAMIC_CLASS_2, 16.0, null, 25, -16)).isTrue();
        assertThat(kept(Technology.FILM, 16.0, null, 25, -16.1)).isFalse();
        assertThat(kept(Technology.FILM, null, null, 25, -1)).isNull();
        assertThat(kept(Technology.FILM, null, null, 25, 1)).isTrue();
    }

    private static Boolean kept(Technology technology, Double ratedV, Double datasheetV, double temperatureC, double lowestV) {
        return ReverseVoltage.of(technology, ratedV, datasheetV, temperatureC, lowestV).kept();
    }
}
