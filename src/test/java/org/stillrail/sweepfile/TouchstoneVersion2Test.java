package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.stillrail.sweepfile.SweepText.assertRefused;
import static org.stillrail.sweepfile.SweepText.read;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Data and rules of the Touchstone specification. */
class TouchstoneVersion2Test {

    private static final String TWO_PORTS = """
            [Version] 2.1
            #
            [Number of Ports] 2
            [Two-Port Data Order] 21_12
            [Number of Frequencies] 2
            [Number of Noise Frequencies] 2
            [Reference] 50 25.0
            [Network Data]
            2 0.95 -26 3.57 157 0.04 76 0.66 -14
            22 0.60 -144 1.30 40 0.14 40 0.56 -85
            [Noise Data]
            4 0.7 0.64 69 19
            18 2.7 0.46 -33 20
            [End]
            """;

    /** TS-07, Examples 8 and 11: ohms as they stand, and [Reference] has no effect on Z. */
    @Test
    void impedancesAreNotNormalised() {
        ReadSweep sweep = read("""
                [Version] 2.1
                # MHz Z MA
                [Number of Ports] 1
                [Number of Frequencies] 5
                [Reference] 20.0
                [Network Data]
                100 74.25 -4
                200 60 -22
                300 53.025 -45
                400 30 -62
                500 0.75 -89
                [End]
                """, "a.ts", Fixture.IMPEDANCE);
        double[] r = {74.06913073179194, 55.63103127400724, 37.494337072416684, 14.084146883576725, 0.013089304827962698};
        double[] x = {-5.179418175501303, -22.47639560495472, -37.49433707241668, -26.488427785767808, -0.7498857713672935};
        Source example = SweepText.specification("examples 8 and 11, pp. 13-16");
        Check.that(Topic.FILES, "Examples 8 and 11, version 2, Z in ohms whatever [Reference] says: R").source(example).expected("ohm", r).relative(1e-9)
                .got(sweep.resistanceOhm());
        Check.that(Topic.FILES, "Examples 8 and 11, version 2, Z in ohms whatever [Reference] says: X").source(example).expected("ohm", x).relative(1e-9)
                .got(sweep.reactanceOhm());
        assertThat(sweep.referenceOhm()).isNull();
        assertThat(sweep.warnings()).isEmpty();
    }

    /** TS-11, Examples 18 and 21: the same numbers in two orders. */
    @ParameterizedTest
    @CsvSource({"21_12,3.57,0.04", "12_21,0.04,3.57"})
    void theOrderKeywordSaysWhichTransferComesFirst(String order, double s21, double s12) {
        NetworkData data = Touchstone.read(TWO_PORTS.replace("21_12", order), "a.ts").data();
        Check.that(Topic.FILES, "Examples 18 and 21, two-port order " + order + ": |S21|, |S12|").source(SweepText.specification("pp. 9-10, 24-27"))
                .expected("", s21, s12).relative(1e-12).got(Math.hypot(data.re()[NetworkData.N21][0], data.im()[NetworkData.N21][0]),
                        Math.hypot(data.re()[NetworkData.N12][0], data.im()[NetworkData.N12][0]));
        assertThat(data.referenceOhm()).containsExactly(50, 25);
    }

    @Test
    void noiseIsPassedOver() {
        Touchstone file = Touchstone.read(TWO_PORTS, "a.ts");
        assertThat(file.data().frequencyHz()).containsExactly(2e9, 22e9);
        assertThat(file.warnings()).containsExactly("Noise data (2 lines) were passed over.");
        assertThat(file.format()).isEqualTo("Touchstone 2.1, two ports, S parameters, magnitude and angle, GHz, 50 and 25 ohm");
    }

    /** TS-13 for two ports: references over a line break, and [Reference] before the option line's R. TS-15: N11 N21 N22. */
    @ParameterizedTest
    @ValueSource(strings = {"Lower", "upper"})
    void triangularMatricesAreMirrored(String format) {
        NetworkData data = Touchstone.read("""
                [Version] 2.0
                # GHz S RI R 50
                [Number of Ports] 2
                [Two-Port Data Order] 12_21
                [Number of Frequencies] 1
                [Reference] 75
                75
                [Matrix Format] %s
                [Network Data]
                1 .1 .2 .3 .4 .5 .6
                [End]
                """.formatted(format), "a.ts").data();
        Check.that(Topic.FILES, "[Reference] over a line break goes before the option line, matrix format " + format).source(SweepText.specification("p. 13"))
                .expected("ohm", 75, 75).got(data.referenceOhm());
        Check.that(Topic.FILES, "Matrix format " + format + " of two ports holds N11 N21 N22: Re N11, Re N21, Im N12, Im N22")
                .source(SweepText.specification("pp. 15, 18")).expected("", 0.1, 0.3, 0.4, 0.6)
                .got(data.re()[NetworkData.N11][0], data.re()[NetworkData.N21][0], data.im()[NetworkData.N12][0], data.im()[NetworkData.N22][0]);
    }

    /** TS-14: values are counted, not lines. */
    @Test
    void pointsMayBreakAnywhere() {
        String wrapped = TWO_PORTS.replace("2 0.95 -26 3.57 157 0.04 76 0.66 -14\n22 0.60", "2 0.95 -26 3.57\n157 0.04 76 0.66 -14 22\n0.60");
        assertThat(Touchstone.read(wrapped, "a.ts").data()).usingRecursiveComparison()
                .isEqualTo(Touchstone.read(TWO_PORTS, "a.ts").data());
    }

    /** TS-14 and TS-15: numbers of a point. */
    @Test
    void numbersOfAPointFollowThePorts() {
        Check.that(Topic.FILES, "Numbers of a point for 1, 2, 3, 4 and 6 ports: 2 n^2 + 1").source(SweepText.specification("p. 14"))
                .expected("", 3, 9, 19, 33, 73).got(PortCount.numbersPerPoint(1), PortCount.numbersPerPoint(2), PortCount.numbersPerPoint(3),
                        PortCount.numbersPerPoint(4), PortCount.numbersPerPoint(6));
    }

    /** TS-18, TS-19: optional blocks, blanks and case. */
    @Test
    void informationLaterOptionLinesAndCaseDoNotMatter() {
        ReadSweep sweep = read("""
                ! comment
                [VERSION] 2.0 ! comment
                # hz z ri
                [begin information]
                [Manufacturer] invented
                anything 1 2 3
                [end information]
                [number  of ports] 1
                # GHz S MA R 75
                [Number of Frequencies] 2
                [Network data]
                1 2 3

                # MHz
                2 4 5 ! comment
                [END]
                ! a comment after the end is fine
                """, "a.ts", Fixture.IMPEDANCE);
        assertThat(sweep.frequencyHz()).containsExactly(1, 2);
        assertThat(sweep.resistanceOhm()).containsExactly(2, 4);
        assertThat(sweep.reactanceOhm()).containsExactly(3, 5);
        assertThat(sweep.warnings()).isEmpty();
    }

    /** TS-22: Example 20 lacks the order keyword; that only matters where the two transfers differ. */
    @Test
    void aMissingOrderMattersOnlyWhereTheTransfersDiffer() {
        String without = TWO_PORTS.replace("[Two-Port Data Order] 21_12\n", "");
        assertRefused(without, "a.ts", Fixture.SHUNT_THROUGH, 0, "[Two-Port Data Order] is missing");
        assertThat(read(without, "a.ts", Fixture.REFLECTION).warnings())
                .anySatisfy(w -> assertThat(w).contains("[Two-Port Data Order] is missing"));
        assertThat(read(without.replace("3.57 157 0.04 76", "0.04 76 0.04 76").replace("1.30 40", "0.14 40"), "a.ts",
                Fixture.SHUNT_THROUGH).points()).isEqualTo(2);
    }

    @Test
    void aMissingEndIsSaid() {
        assertThat(Touchstone.read(TWO_PORTS.replace("[End]\n", ""), "a.ts").warnings())
                .anySatisfy(w -> assertThat(w).contains("does not close with [End]"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "[Version] 2.1|[Version] 3.0|1|version '3.0' is not known",
        "[Number of Ports] 2|[Number of Ports] two|3|whole number of 1 or more, not 'two'",
        "[Number of Ports] 2|[Number of Ports] 3|3|3 ports; files of one or two ports are read",
        "[Number of Ports] 2|! none|8|[Number of Ports] is missing",
        "[Number of Ports] 2|[Number of Ports] 1|4|belongs to files of two ports only",
        "[Two-Port Data Order] 21_12|[Two-Port Data Order] 22_11|4|must be 12_21 or 21_12",
        "[Number of Frequencies] 2|! none|8|[Number of Frequencies] is missing",
        "[Number of Frequencies] 2|[Number of Frequencies] 3|5|says 3, but the data hold 2 points",
        "[Number of Frequencies] 2|[Number of Frequencies] 0|5|whole number of 1 or more",
        "[Number of Frequencies] 2|[Number of Frequencies] 200001|5|200,000 points",
        "[Reference] 50 25.0|[Reference] 50|7|gives 1 value, the file has 2 ports",
        "[Reference] 50 25.0|[Reference] 50 0|7|above 0 ohm",
        "[Reference] 50 25.0|[Reference] 50 x|7|'x' is not a finite number",
        "[Reference] 50 25.0|[Matrix Format] diagonal|7|must be Full, Lower or Upper",
        "[Reference] 50 25.0|[Mixed-Mode Order] D1,2 C1,2|7|mixed-mode",
        "[Reference] 50 25.0|[Surprise] 1|7|unknown keyword '[Surprise]'",
        "[Reference] 50 25.0|[Version] 2.1|7|stands twice",
        "[Reference] 50 25.0|[Begin Information]|7|not closed",
        "[Reference] 50 25.0|[Reference 50 25|7|no closing bracket",
        "[Reference] 50 25.0|50 25|7|where a keyword should",
        "[Network Data]|[Network Data] 1|8|on the line after",
        "22 0.60 -144|22 0.60|10|the file ends within a point",
        "0.66 -14|0.66 dog|9|'dog' is not a finite number",
        "[End]|[End];5 6 7|15|text after [End]"
    })
    void aFaultIsNamedWithItsLine(String original, String fault, int line, String words) {
        assertRefused(TWO_PORTS.replace(original, fault.replace(';', '\n')), "a.ts", Fixture.SHUNT_THROUGH, line, words);
    }

    @Test
    void dataMustBeThere() {
        assertRefused("[Version] 2.0\n#\n[Number of Ports] 1\n[Number of Frequencies] 1\n[End]\n", "a.ts", Fixture.REFLECTION, 0,
                "[Network Data] is missing");
        assertRefused("[Version] 2.0\n#\n[Number of Ports] 1\n[Number of Frequencies] 1\n[Network Data]\n[End]\n", "a.ts",
                Fixture.REFLECTION, 0, "no numbers after [Network Data]");
    }

    /** TS-24, the head of Example 17. */
    @Test
    void mixedModeAndManyPortsAreRefused() {
        assertRefused("[Version] 2.1\n# MHz Y RI R 50\n[Number of Ports] 6\n[Number of Frequencies] 1\n", "a.ts", Fixture.IMPEDANCE, 3,
                "6 ports");
    }
}
