package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Rows TS-01 to TS-04 and TS-17. */
class OptionLineTest {

    private static final Source SPECIFICATION = SweepText.specification("option line, pp. 6-9");

    @Test
    void aBareHashMarkTakesEveryDefault() {
        Check.that(Topic.FILES, "Option line #: every default").source(SPECIFICATION).expected("GHz, S, MA, R 50.0").gotText(words("#"));
        assertThat(parse("#")).isEqualTo(new OptionLine(1e9, "GHz", NetworkData.Parameter.S, ComplexFormat.MA, List.of(50.0)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"# GHz S RI R 100", "# S R 100 GHz RI", "# ghz s ri r 100", "#GHZ\tS  RI R 1e2", "# GHz S RI R100"})
    void fieldsComeInAnyOrderAndCase(String line) {
        Check.that(Topic.FILES, "Option line " + line.replace('\t', ' ')).source(SPECIFICATION).expected("GHz, S, RI, R 100.0").gotText(words(line));
    }

    @ParameterizedTest
    @CsvSource({"# kHz Y RI R 100,1e3,Y,RI,100", "# Hz Z MA R 10,1,Z,MA,10", "# MHz S DB R 1,1e6,S,DB,1", "# Z,1e9,Z,MA,50"})
    void everyFieldIsReadAndTheRestIsDefault(String line, double hertz, NetworkData.Parameter parameter, ComplexFormat format,
                                             double reference) {
        OptionLine option = parse(line);
        Check.that(Topic.FILES, "Option line " + line + ": hertz of its unit").source(SPECIFICATION).expected("Hz", hertz).got(option.hertzPerUnit());
        assertThat(option.parameter()).isEqualTo(parameter);
        assertThat(option.format()).isEqualTo(format);
        assertThat(option.referenceOhm()).containsExactly(reference);
    }

    @Test
    void onReferencePerPortMayCloseTheLine() {
        Check.that(Topic.FILES, "Option line of version 1.1 with a reference for each of two ports").source(SPECIFICATION).expected("GHz, S, RI, R 0.1 75.0")
                .gotText(words("# S GHz RI R 0.1 75.0"));
        Check.that(Topic.FILES, "Option line of version 1.1 with a reference for each of four ports").source(SPECIFICATION)
                .expected("GHz, S, MA, R 0.01 0.01 50.0 50.0").gotText(words("# GHz S MA R 0.01 0.01 50.0 50.0"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "# THz S RI R 50|frequency unit 'THz'",
        "# kHz H RI R 1|hybrid (H)",
        "# MHz G DB R 1|hybrid (G)",
        "# GHz S RI R|must be followed by",
        "# GHz S RI R zero|must be followed by",
        "# GHz S RI R 0|above 0",
        "# GHz S RI R -50|above 0",
        "# GHz S RI R 50 75 MA|at the end of the option line",
        "# GHz MHz S|frequency unit twice",
        "# S Z|parameter twice",
        "# RI MA|number format twice",
        "# R 50 R 75|reference twice",
        "# GHz T RI|'T'",
        "# GHz S RI 50|'50'"
    })
    void aFaultIsNamedWithItsLine(String line, String words) {
        assertThatThrownBy(() -> OptionLine.parse(new SourceLine(7, line)))
                .isInstanceOf(SweepFileException.class)
                .hasMessageStartingWith("Line 7: ")
                .hasMessageContaining(words);
    }

    private static String words(String line) {
        OptionLine option = parse(line);
        return "%s, %s, %s, R %s".formatted(option.unit(), option.parameter(), option.format(),
                option.referenceOhm().stream().map(String::valueOf).collect(Collectors.joining(" ")));
    }

    private static OptionLine parse(String line) {
        return OptionLine.parse(new SourceLine(1, line));
    }
}
