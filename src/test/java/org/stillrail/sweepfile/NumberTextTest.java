package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class NumberTextTest {

    /** TS-19. */
    @ParameterizedTest
    @CsvSource({"1.2345e-12,1.2345e-12", ".5,0.5", "0.5,0.5"})
    void numbersOfTheSpecification(String text, double value) {
        Check.that(Topic.FILES, "Number written " + text).source(SweepText.specification("general syntax, pp. 4-6")).expected("", value)
                .got(NumberText.parse(text, false));
    }

    @ParameterizedTest
    @CsvSource({"5.,5", "+3E+002,300", "-1.5D-03,-0.0015", "\u22122,-2",
        "4.671267560221261E+004,46712.67560221261", "123456789012345678901,123456789012345678901", "1e-400,0"})
    void numbersOfInstruments(String text, double value) {
        assertThat(NumberText.parse(text, false)).isEqualTo(value);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ".", "-", "e5", "1e", "1e+", "NaN", "Infinity", "inf", "0x10", "1f", "1d", "1.2.3", "1,5", "1 2", "1e999", "--1", "\u0661"})
    void whatIsNoPlainNumber(String text) {
        assertThat(NumberText.parse(text, false)).isNaN();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"1,5;1.5", ",5e1;5", "-2;-2"})
    void decimalComma(String text, double value) {
        assertThat(NumberText.parse(text, true)).isEqualTo(value);
    }

    @Property(tries = 2000, shrinking = ShrinkingMode.OFF)
    void everyDoubleComesBack(@ForAll double value, @ForAll @IntRange(min = 0, max = 17) int decimals) {
        Check.that(Topic.FILES, "Numbers as printed by Java, 2000 random ones").source(Source.independent("the Java library's correctly rounded conversion"))
                .expected("the same double").compare("", value, NumberText.parse(Double.toString(value), false));
        String rounded = String.format(Locale.ROOT, "%." + decimals + "e", value);
        double expected = Double.parseDouble(rounded);
        assertThat(NumberText.parse(rounded, false)).isEqualTo(Double.valueOf(Double.isInfinite(expected) ? Double.NaN : expected));
    }
}
