package org.stillrail.electrical.stress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class ThermalResistanceTest {

    private static final Source NOTES = Source.fromMemory("makers' notes: 1 / (beta S) with beta = 2.3e-3 S^-0.2 W / (K cm^2); evaluated by hand");

    /** 10 mm by 16 mm: 5.8119 cm2, 1.6176 mW / (K cm2). */
    @Test
    void canByItsSurface() {
        ThermalResistance can = ThermalResistance.ofCan(0.01, 0.016);
        Check.that(Topic.STRESS, "Thermal resistance of a can of 10 mm by 16 mm by its surface").source(NOTES)
                .expected("K/W", 106.36895266823964).relative(1e-9).got(can.kelvinPerWatt());
        assertThat(can.estimated()).isTrue();
        assertThat(can.source()).contains("estimated");
    }

    /** 7.3 mm by 4.3 mm by 2.8 mm: 0.9635 cm2. */
    @Test
    void blockByItsSurface() {
        Check.that(Topic.STRESS, "Thermal resistance of a block of 7.3 mm by 4.3 mm by 2.8 mm by its surface").source(NOTES)
                .expected("K/W", 447.91003116245986).relative(1e-9).got(ThermalResistance.ofBlock(0.0073, 0.0043, 0.0028).kelvinPerWatt());
    }

    /** Natural convection with radiation takes away 5 to 25 W / (m2 K). */
    @ParameterizedTest
    @CsvSource({"0.008, 0.0115", "0.018, 0.0355", "0.035, 0.05", "0.063, 0.1"})
    void filmOfAirIsOfTheUsualSize(double diameterM, double heightM) {
        double surface = Math.PI / 4 * diameterM * (diameterM + 4 * heightM);
        Check.that(Topic.STRESS, "Heat that a can of %s mm by %s mm gives off: 5 to 25 W / (m^2 K)".formatted((float) (1e3 * diameterM), (float) (1e3 * heightM)))
                .source(Source.fromMemory("textbooks of heat transfer, natural convection with radiation")).expected("W / (m^2 K)", 15).absolute(10)
                .got(1 / ThermalResistance.ofCan(diameterM, heightM).kelvinPerWatt() / surface);
    }

    @Test
    void givenIsNoEstimate() {
        assertThat(ThermalResistance.given(40, "datasheet").estimated()).isFalse();
        assertThatThrownBy(() -> ThermalResistance.given(0, "datasheet")).hasMessageContaining("kelvinPerWatt");
        assertThatThrownBy(() -> ThermalResistance.ofCan(0.01, -1)).hasMessageContaining("heightM");
    }
}
