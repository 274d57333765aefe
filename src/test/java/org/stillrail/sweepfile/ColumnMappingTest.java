package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColumnMappingTest {

    @ParameterizedTest
    @ValueSource(strings = {
        "frequency=2, resistance=3, reactance=-4",
        "frequency=1:kHz, magnitude=2:mOhm, phase=3:rad",
        "frequency=1, s21-decibel=2, s21-phase=3, reference=75.0",
        "frequency=1, parallel-capacitance=2:nF, dissipation=3:%, block=9, delimiter=semicolon, decimal=comma"
    })
    void theTextualFormComesBackAsItWas(String text) {
        assertThat(ColumnMapping.parse(text).toText()).isEqualTo(text);
        assertThat(ColumnMapping.parse(ColumnMapping.parse(text).toText())).isEqualTo(ColumnMapping.parse(text));
    }

    @Test
    void blanksSemicolonsAndOrderDoNotMatter() {
        ColumnMapping mapping = ColumnMapping.parse(" reactance = - 4 : mOhm ;frequency=2;  resistance=3,");
        assertThat(mapping.column(ColumnKind.REACTANCE)).isEqualTo(new MappedColumn(ColumnKind.REACTANCE, 4, "mOhm", true));
        assertThat(mapping.column(ColumnKind.FREQUENCY).number()).isEqualTo(2);
        assertThat(mapping.referenceOhm()).isEqualTo(50);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "frequency|'frequency' is not of the form",
        "frequency=1, colour=2|'colour' is not a kind of column",
        "frequency=one|must be a number",
        "frequency=0, resistance=2, reactance=3|must be 1 to 1000, not 0",
        "frequency=1:Ohm, resistance=2, reactance=3|'Ohm' is no unit of frequency",
        "frequency=1, resistance=2|do not make an impedance",
        "resistance=2, reactance=3|must name the frequency",
        "frequency=1, resistance=2, resistance=4, reactance=3|resistance twice",
        "frequency=1, resistance=2, reactance=3, magnitude=4|name one pair only",
        "frequency=1, resistance=2, reactance=3, reference=0|above 0 ohm",
        "frequency=1, resistance=2, reactance=3, delimiter=pipe|comma, semicolon, tab or space",
        "frequency=1, resistance=2, reactance=3, decimal=dot|comma or point",
        "\"\"|must name the frequency"
    })
    void faultsAreNamed(String text, String words) {
        assertThatIllegalArgumentException().isThrownBy(() -> ColumnMapping.parse(text)).withMessageContaining(words);
    }
}
