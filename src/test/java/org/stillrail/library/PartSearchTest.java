package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.Technology;

/** What is typed into a part's picker. */
class PartSearchTest {

    private static PartFilter read(String text) {
        return PartSearch.filter(text);
    }

    @Test
    void sizesVoltagesAndTechnologiesAreReadAndTheRestHasToOccur() {
        PartFilter filter = read(" 10uF  wren 16V CERAMIC ");
        assertThat(filter.text()).isEqualTo("wren");
        assertThat(filter.capacitanceFromF()).isCloseTo(9.9e-6, within(1e-12));
        assertThat(filter.capacitanceToF()).isCloseTo(10.1e-6, within(1e-12));
        assertThat(filter.ratedVoltageFromV()).isEqualTo(16);
        assertThat(filter.technologies()).containsExactlyInAnyOrder(Technology.CERAMIC_CLASS_1, Technology.CERAMIC_CLASS_2);
    }

    @Test
    void thePrefixMayStandForThePoint() {
        assertThat(read("4u7").capacitanceFromF()).isCloseTo(4.653e-6, within(1e-12));
        assertThat(read("6V3").ratedVoltageFromV()).isEqualTo(6.3);
        assertThat(read("2,5V").ratedVoltageFromV()).isEqualTo(2.5);
    }

    @Test
    void severalWordsOfATechnologyNarrowIt() {
        assertThat(read("polymer").technologies()).containsExactlyInAnyOrder(Technology.POLYMER_ALUMINIUM, Technology.TANTALUM_POLYMER);
        assertThat(read("polymer tantalum").technologies()).containsExactly(Technology.TANTALUM_POLYMER);
        assertThat(read("polymer ceramic").technologies()).as("nothing is both").isEmpty();
    }

    @Test
    void anythingElseIsAWordOfTheNumberOrTheMaker() {
        assertThat(read("22U-10 wr").text()).isEqualTo("22U-10 wr");
        assertThat(read("0603").text()).isEqualTo("0603");
        PartFilter nothing = read("  ");
        assertThat(nothing.text()).isNull();
        assertThat(nothing.technologies()).isNull();
        assertThat(nothing.capacitanceFromF()).isNull();
    }
}
