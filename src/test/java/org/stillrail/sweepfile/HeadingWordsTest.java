package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeadingWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', value = {
        "freq/Hz~FREQUENCY~Hz~false", "Frequency (kHz)~FREQUENCY~kHz~false", "f [MHz]~FREQUENCY~MHz~false",
        "Frequency Hz~FREQUENCY~Hz~false", "freq_Hz~FREQUENCY~Hz~false", "Frequency~FREQUENCY~``~false", "Hz~FREQUENCY~Hz~false",
        "omega (rad/s)~FREQUENCY~rad/s~false", "Frequency, Hz~FREQUENCY~Hz~false",
        "Re(Z)/Ohm~RESISTANCE~Ohm~false", "-Im(Z)/Ohm~REACTANCE~Ohm~true", "\u2212Im(Z)/\u03a9~REACTANCE~\u03a9~true",
        "Z' (mOhm)~RESISTANCE~mOhm~false", "-Z'' (Ohm)~REACTANCE~Ohm~true", "Z\"~REACTANCE~``~false", "Zreal~RESISTANCE~``~false",
        "Z_imag [Ohms]~REACTANCE~Ohms~false", "Rs(Ohm)~RESISTANCE~Ohm~false", "X (\u2126)~REACTANCE~\u2126~false", "ESR~RESISTANCE~``~false",
        "|Z|/Ohm~MAGNITUDE~Ohm~false", "Impedance (Ohm)~MAGNITUDE~Ohm~false", "Zmod~MAGNITUDE~``~false", "Z [kOhm]~MAGNITUDE~kOhm~false",
        "Phase(Z)/deg~PHASE~deg~false", "-Phase(Z)/deg~PHASE~deg~true", "theta (\u00b0)~PHASE~\u00b0~false", "Phase [rad]~PHASE~rad~false",
        "\u03b8~PHASE~``~false", "Ls (nH)~SERIES_INDUCTANCE~nH~false", "Cs(F)~SERIES_CAPACITANCE~F~false",
        "Cp [pF]~PARALLEL_CAPACITANCE~pF~false", "D~DISSIPATION~``~false", "tan \u03b4~DISSIPATION~``~false", "DF (%)~DISSIPATION~%~false",
        "Q~QUALITY~``~false", "G(S)~CONDUCTANCE~S~false", "B (mS)~SUSCEPTANCE~mS~false", "Rp (MOhm)~PARALLEL_RESISTANCE~MOhm~false",
        "S11(REAL)~S11_REAL~``~false", "S11(IMAG)~S11_IMAGINARY~``~false", "Re(S11)~S11_REAL~``~false", "|S11|~S11_MAGNITUDE~``~false",
        "S21(DB)~S21_DECIBEL~DB~false", "|S21|/dB~S21_DECIBEL~dB~false", "S21 (dB)~S21_DECIBEL~dB~false", "arg(S21)/deg~S21_PHASE~deg~false",
        "S21(DEG)~S21_PHASE~DEG~false", "S21 Phase (deg)~S21_PHASE~deg~false", "S21 Log Mag (dB)~S21_DECIBEL~dB~false",
        "Trace 1: Impedance: Magnitude (\u03a9)~MAGNITUDE~\u03a9~false", "Trace 2: Impedance: Phase (\u00b0)~PHASE~\u00b0~false",
        "|Z|(ohm)-data~MAGNITUDE~ohm~false", "theta-z(deg)-data~PHASE~deg~false", "Z'(a)~RESISTANCE~``~false", "Z''(b)~REACTANCE~``~false",
        "Impedance (Real) [Ohm]~RESISTANCE~Ohm~false", "Frequency (in kHz)~FREQUENCY~kHz~false", "re:Trc1_S11~S11_REAL~``~false",
        "im:Trc1_S11~S11_IMAGINARY~``~false", "dB:Trc2_S21~S21_DECIBEL~``~false", "Imaginary Impedance (Ohm)~REACTANCE~Ohm~false",
        "loop_index~BLOCK~``~false", "Cycle number~BLOCK~``~false"
    })
    void knownWords(String heading, ColumnKind kind, String unit, boolean negated) {
        assertThat(HeadingWords.of(heading)).isEqualTo(new HeadingWords(kind, unit, negated));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "time/s", "I/A", "Ewe/V", "Point", "Temperature (degC)", "Magnitude (dB)", "S21", "S12(DB)", "C (F)", "index"})
    void whatIsNotKnownIsNotGuessed(String heading) {
        assertThat(HeadingWords.of(heading).kind()).isNull();
    }

    @Test
    void onlyThePrefixMilliNeedsItsCase() {
        assertThat(Dimension.RESISTANCE.scale("mOhm")).isEqualTo(1e-3);
        assertThat(Dimension.RESISTANCE.scale("MOhm")).isEqualTo(1e6);
        assertThat(Dimension.FREQUENCY.scale("mHz")).isEqualTo(1e-3);
        assertThat(Dimension.FREQUENCY.scale("mhz")).isEqualTo(1e6);
        assertThat(Dimension.FREQUENCY.scale("KHZ")).isEqualTo(1e3);
        assertThat(Dimension.CAPACITANCE.scale("\u00b5F")).isEqualTo(1e-6);
        assertThat(Dimension.CAPACITANCE.scale("PF")).isEqualTo(1e-12);
        assertThat(Dimension.FREQUENCY.scale("Ohm")).isNaN();
        assertThat(Dimension.RESISTANCE.scale("xOhm")).isNaN();
    }
}
