package org.stillrail.electrical.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule of makers' notes, from memory; values by hand. */
class ThermalResistanceTest {

    /** 10 mm by 16 mm: 5.8119 cm2, 1.6176 mW / (K cm2). */
    @Test
    void canByItsSurface() {
        ThermalResistance can = ThermalResistance.ofCan(0.01, 0.016);
        assertThat(can.kelvinPerWatt()).isCloseTo(106.36895266823964, withPercentage(1e-9));
        assertThat(can.estimated()).isTrue();
        assertThat(can.source()).contains("estimated");
    }

    /** 7.3 mm by 4.3 mm by 2.8 mm: 0.9635 cm2. */
    @Test
    void blockByItsSurface() {
        assertThat(ThermalResistance.ofBlock(0.0073, 0.0043, 0.0028).kelvinPerWatt()).isCloseTo(447.91003116245986, withPercentage(1e-9));
    }

    /** Natural convection with radiation takes away 5 to 25 W / (m2 K), any textbook of heat transfer, from memory. */
    @ParameterizedTest
    @CsvSource({"0.008, 0.0115", "0.018, 0.0355", "0.035, 0.05", "0.063, 0.1"})
    void filmOfAirIsOfTheUsualSize(double diameterM, double heightM) {
        double surface = Math.PI / 4 * diameterM * (diameterM + 4 * heightM);
        assertThat(1 / ThermalResistance.ofCan(diameterM, heightM).kelvinPerWatt() / surface).isBetween(5.0, 25.0);
    }

    @Test
    void givenIsNoEstimate() {
        assertThat(ThermalResistance.given(40, "datasheet").estimated()).isFalse();
        assertThatThrownBy(() -> ThermalResistance.given(0, "datasheet")).hasMessageContaining("kelvinPerWatt");
        assertThatThrownBy(() -> ThermalResistance.ofCan(0.01, -1)).hasMessageContaining("heightM");
    }
}
