package org.stillrail.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    /** The letter-point form is that of IEC 60062 (from memory); the rest is common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "22u|F|22e-6", "4m7|ohm|4.7e-3", "100n|F|100e-9", "0.2|ohm|0.2", "4.7 uF|F|4.7e-6", "2u2|F|2.2e-6", "1e-6|F|1e-6",
        "10k|Hz|10e3", "1.5 MHz|Hz|1.5e6", "1M5|Hz|1.5e6", "4,7m|ohm|4.7e-3", "47 µF|F|47e-6", "3 mΩ|ohm|3e-3", "3 mohm|ohm|3e-3",
        ".5|V|0.5", "-40|degC|-40", "-40 degC|degC|-40", "12 V|V|12", "500m|A|0.5", "2 mm|m|2e-3", "5%|%|5", "105 degC|degC|105", "85 °C|degC|85", "2000 h|h|2000", "2k|h|2000"})
    void readsWhatEngineersType(String typed, String unit, double expected) {
        assertThat(Quantity.parse(typed, unit)).isCloseTo(expected, within(Math.abs(expected) * 1e-15));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "abc", "1.2.3", "22 x", "4m7m", "1e9999", "22 uV", "NaN", "Infinity"})
    void refusesWhatIsNoQuantity(String typed) {
        assertThatThrownBy(() -> Quantity.parse(typed, "F")).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"22e-6|F|22 µF", "0.0047|ohm|4.7 mΩ", "999.96|Hz|1 kHz", "0.2|V|200 mV", "0|A|0 A", "-0.012|V|-12 mV", "105|degC|105 °C", "2000|h|2000 h", "0.5|%|0.5 %", "0.12|EUR|0.12 EUR",
        "4.44e-14|%|4.44e-14 %", "0.000012|%|0.000012 %", "1.2e-22|F|1.2e-7 fF", "3.3e-16|F|0.33 fF"})
    void showsEngineeringPrefixes(double value, String unit, String shown) {
        assertThat(Quantity.format(value, unit).replace('\u00a0', ' ')).isEqualTo(shown);
    }

    @Property
    void entryReadsBackAsTheSameValue(@ForAll @DoubleRange(min = 1, max = 9.99) double mantissa, @ForAll @IntRange(min = -15, max = 11) int exponent) {
        double value = mantissa * Math.pow(10, exponent);
        assertThat(Quantity.parse(Quantity.entry(value), "F")).isEqualTo(value);
    }
}
