package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.stillrail.sweepfile.SweepText.assertRefused;
import static org.stillrail.sweepfile.SweepText.assertRelative;
import static org.stillrail.sweepfile.SweepText.read;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Data and rules of the numbered examples of the Touchstone specification. */
class TouchstoneVersion1Test {

    private static final String EXAMPLE_14 = """
            # GHz S RI R 50.0
            1.0000 0.3926 -0.1211 -0.0003 -0.0021 -0.0003 -0.0021 0.3926 -0.1211
            2.0000 0.3517 -0.3054 -0.0096 -0.0298 -0.0096 -0.0298 0.3517 -0.3054
            10.0000 0.3419 0.3336 -0.0134 0.0379 -0.0134 0.0379 0.3419 0.3336
            """;

    private static final String EXAMPLE_19 = """
            #
            2 0.95 -26 3.57 157 0.04 76 0.66 -14
            22 0.60 -144 1.30 40 0.14 40 0.56 -85
            4 0.7 0.64 69 0.38
            18 2.7 0.46 -33 0.40
            """;

    /** TS-06, Example 9; the impedance is computed outside the project from the printed S11. */
    @Test
    void onePortOfOnePoint() {
        ReadSweep sweep = read("# MHz S MA R 50\n2.000 0.894 -12.136\n", "a.s1p", Fixture.REFLECTION);
        assertThat(sweep.points()).isEqualTo(1);
        assertRelative(sweep.frequencyHz()[0], 2e6, 1e-15);
        Check.that(Topic.FILES, "Example 9, one port, S11 0.894 at -12.136 deg: R and X by 50 (1 + S) / (1 - S)")
                .source(SweepText.specification("example 9, p. 15; the impedance computed in Python")).expected("ohm", 196.07617060489827, -367.11922889880606)
                .relative(1e-9).got(sweep.resistanceOhm()[0], sweep.reactanceOhm()[0]);
        assertThat(sweep.referenceOhm()).isEqualTo(50);
        assertThat(sweep.format()).isEqualTo("Touchstone 1.0, one port, S parameters, magnitude and angle, MHz, 50 ohm");
        assertThat(sweep.warnings()).isEmpty();
    }

    /** TS-07, Example 10. */
    @Test
    void impedancesAreNormalisedToTheReference() {
        ReadSweep sweep = read("""
                # MHz Z MA R 75
                100 0.99 -4
                200 0.80 -22
                300 0.707 -45
                400 0.40 -62
                500 0.01 -89
                """, "a.s1p", Fixture.IMPEDANCE);
        double[] magnitude = {74.25, 60, 53.025, 30, 0.75};
        double[] angle = {-4, -22, -45, -62, -89};
        double[] gotMagnitude = new double[5];
        double[] gotAngle = new double[5];
        for (int i = 0; i < 5; i++) {
            assertRelative(sweep.frequencyHz()[i], 1e8 * (i + 1), 1e-15);
            gotMagnitude[i] = Math.hypot(sweep.resistanceOhm()[i], sweep.reactanceOhm()[i]);
            gotAngle[i] = Math.toDegrees(Math.atan2(sweep.reactanceOhm()[i], sweep.resistanceOhm()[i]));
        }
        Source example = SweepText.specification("examples 10 and 8, pp. 13-16");
        Check.that(Topic.FILES, "Example 10, version 1, Z normalised to 75 ohm: |Z|").source(example).expected("ohm", magnitude).relative(1e-9).got(gotMagnitude);
        Check.that(Topic.FILES, "Example 10, version 1, Z normalised to 75 ohm: angle").source(example).expected("deg", angle).relative(1e-9).got(gotAngle);
    }

    /** TS-23: 0.8 at 75 ohm is 10.666... mS, so 93.75 ohm. */
    @Test
    void admittancesAreNormalisedToTheReference() {
        ReadSweep sweep = read("# MHz Y RI R 75\n1 0.8 0\n2 0 0.8\n", "a.s1p", Fixture.IMPEDANCE);
        Check.that(Topic.FILES, "Version 1, Y of 0.8 and 0.8 j normalised to 75 ohm: R and X").source(Source.fromMemory("Touchstone version 1 files, Y = y / R"))
                .expected("ohm", 93.75, -93.75).relative(1e-12).got(sweep.resistanceOhm()[0], sweep.reactanceOhm()[1]);
    }

    /** TS-05: three ways to write 0.5 j. */
    @ParameterizedTest
    @CsvSource({"DB,-6.02059991,90,1e-8", "MA,0.5,90,1e-12", "RI,0,0.5,1e-12"})
    void formatsMeanTheSame(ComplexFormat format, double first, double second, double tolerance) {
        Check.that(Topic.FILES, "0.5 j written in format " + format + " as " + first + " " + second).source(SweepText.specification("p. 6")).expected("", 0, 0.5)
                .absolute(tolerance).got(format.re(first, second), format.im(first, second));
    }

    /** TS-09, Example 14. */
    @Test
    void twoPortsStandColumnFirst() {
        NetworkData data = Touchstone.read(EXAMPLE_14, "a.s2p").data();
        assertThat(data.frequencyHz()).containsExactly(1e9, 2e9, 10e9);
        Source example = SweepText.specification("example 14, p. 16");
        Check.that(Topic.FILES, "Example 14, two ports: Re S11").source(example).expected("", 0.3926, 0.3517, 0.3419).got(data.re()[NetworkData.N11]);
        Check.that(Topic.FILES, "Example 14, two ports: Im S11").source(example).expected("", -0.1211, -0.3054, 0.3336).got(data.im()[NetworkData.N11]);
        Check.that(Topic.FILES, "Example 14, two ports: Re S21").source(example).expected("", -0.0003, -0.0096, -0.0134).got(data.re()[NetworkData.N21]);
        Check.that(Topic.FILES, "Example 14, two ports: Im S22").source(example).expected("", -0.1211, -0.3054, 0.3336).got(data.im()[NetworkData.N22]);
    }

    /** TS-10, Example 19: noise begins where the frequency does not rise. */
    @Test
    void noiseIsPassedOver() {
        Touchstone file = Touchstone.read(EXAMPLE_19, "a.s2p");
        Source example = SweepText.specification("example 19, pp. 24-26");
        Check.that(Topic.FILES, "Example 19: network points before the noise").source(example).expected("Hz", 2e9, 22e9).got(file.data().frequencyHz());
        double s21 = Math.hypot(file.data().re()[NetworkData.N21][0], file.data().im()[NetworkData.N21][0]);
        double s12 = Math.hypot(file.data().re()[NetworkData.N12][0], file.data().im()[NetworkData.N12][0]);
        Check.that(Topic.FILES, "Example 19, column order N11 N21 N12 N22: |S21|, |S12| of the first point").source(example).expected("", 3.57, 0.04)
                .relative(1e-12).got(s21, s12);
        assertThat(file.warnings()).containsExactly("Noise data from line 4 on were passed over.");
    }

    @Test
    void aFileCutOffWithinAPointIsNoNoise() {
        assertRefused("# GHz S RI\n1 0 0 1 0 1 0 0 0\n2 0 0 1 0 1 0 0 0\n3 0 0 1 0\n", "a.s2p", Fixture.SHUNT_THROUGH, 4,
                "ends within a point");
    }

    /** TS-08 and Example 12 hold hybrid data, which are refused. */
    @Test
    void hybridParametersAreRefused() {
        assertRefused("# kHz H MA R 1\n2 0.95 -26 3.57 157 0.04 76 0.66 -14\n", "a.s2p", Fixture.SHUNT_THROUGH, 1, "hybrid (H)");
    }

    /** TS-12, the first point of Example 15, by its shape alone and by its name. */
    @ParameterizedTest
    @ValueSource(strings = {"a.s4p", "a.txt", "a.s2p"})
    void fourPortsAreRefused(String name) {
        String file = """
                # GHz S MA R 50
                5.00000 0.6 161.24 0.4 -42.2 0.42 -66.58 0.53 -79.34 ! row 1
                 0.4 -42.2 0.6 161.2 0.53 -79.34 0.42 -66.58 ! row 2
                 0.42 -66.58 0.53 -79.34 0.6 161.24 0.4 -42.2 ! row 3
                 0.53 -79.34 0.42 -66.58 0.4 -42.2 0.6 161.24 ! row 4
                """;
        assertThat(SweepText.refusal(file, name, Fixture.SHUNT_THROUGH)).hasMessageContaining("files of one or two ports are read");
    }

    /** TS-17: version 1.1 gives a reference per port. */
    @Test
    void referencesPerPortBelongToVersion11() {
        Touchstone file = Touchstone.read("# S GHz RI R 0.1 75.0\n1 0 0 0.5 0 0.5 0 0 0\n", "a.s2p");
        Check.that(Topic.FILES, "Version 1.1, one reference for each port").source(SweepText.specification("pp. 7-12")).expected("ohm", 0.1, 75)
                .got(file.data().referenceOhm());
        assertThat(file.format()).startsWith("Touchstone 1.1, two ports").endsWith("0.1 and 75 ohm");
        assertRefused("# S GHz RI R 50 75\n1 0 0\n", "a.s1p", Fixture.REFLECTION, 1, "2 references, the data have 1 port");
    }

    /** TS-19: general syntax. */
    @Test
    void oddButLegalTextIsRead() {
        String plain = "# MHz S RI R 50\n1 .5 1.25e-1\n2 0.25 -.5\n";
        String odd = "! Gerät Größe \u03a9\r\r#mhz s ri r 50 ! default\r\t1\t.5   1.25E-001!first\r\r! between\r2 +0.25\r\t-.5\r# GHz Z MA\r";
        ReadSweep expected = read(plain, "a.s1p", Fixture.REFLECTION);
        for (byte[] bytes : new byte[][] {odd.getBytes(StandardCharsets.UTF_8), odd.replace("\u03a9", "").getBytes(StandardCharsets.ISO_8859_1)}) {
            ReadSweep sweep = SweepReader.read(bytes, "A.S1P", ReadOptions.of(Fixture.REFLECTION));
            assertThat(sweep.frequencyHz()).isEqualTo(expected.frequencyHz());
            assertThat(sweep.resistanceOhm()).isEqualTo(expected.resistanceOhm());
            assertThat(sweep.reactanceOhm()).isEqualTo(expected.reactanceOhm());
            assertThat(sweep.warnings()).isEmpty();
        }
    }

    @Test
    void aMissingOptionLineMeansTheDefaultsAndIsSaid() {
        ReadSweep sweep = read("! exported\n1 0.5 0\n2 0.5 10\n", "a.s1p", Fixture.REFLECTION);
        assertThat(sweep.frequencyHz()).containsExactly(1e9, 2e9);
        assertRelative(sweep.resistanceOhm()[0], 150, 1e-12);
        assertThat(sweep.warnings()).singleElement().asString().contains("no option line");
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "# GHz S RI\n1 0 0 .5 0\n.5 0 0 0\n2 0 0 .6 0\n.6 0 0 0\n",
        "# GHz S RI\n1\n0 0 .5 0 .5 0 0 0\n2\n0 0 .6 0 .6 0 0 0\n",
        "# GHz S RI\n1 0 0\n.5 0\n.5 0\n0 0\n2 0 0\n.6 0\n.6 0\n0 0\n"
    })
    void wrappedPointsAreCountedByNumbers(String file) {
        ReadSweep sweep = read(file, "a.s2p", Fixture.SHUNT_THROUGH);
        assertThat(sweep.frequencyHz()).containsExactly(1e9, 2e9);
        assertRelative(sweep.resistanceOhm()[0], 25, 1e-12);
        assertRelative(sweep.resistanceOhm()[1], 37.5, 1e-12);
    }

    @Test
    void theShapeOfTheDataGoesBeforeTheName() {
        ReadSweep two = read("# GHz S RI\n1 0 0 .5 0 .5 0 0 0\n", "a.s1p", Fixture.SHUNT_THROUGH);
        assertRelative(two.resistanceOhm()[0], 25, 1e-12);
        assertThat(two.warnings()).singleElement().asString().contains("name says 1 port", "read as 2");
        ReadSweep one = read("# GHz S RI\n1 0 0\n2 .5 0\n3 .5 0\n", "a.s2p", Fixture.REFLECTION);
        assertThat(one.points()).isEqualTo(3);
        assertThat(one.warnings()).singleElement().asString().contains("name says 2 ports", "read as 1");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "# GHz S RI;1 0 0;2 0 zero|3|'zero' is not a finite number",
        "# GHz S RI;1 0 0;2 0 NaN|3|'NaN' is not a finite number",
        "# GHz S RI;1 0 0;2 0 1e999|3|'1e999' is not a finite number",
        "# GHz S RI;1 0 0;2 0 0x10|3|'0x10' is not a finite number",
        "# GHz S RI;1 0 0;2 0;3 0 0|3|2 numbers where a point of one port needs 3",
        "# GHz S RI;1 0 0;2 0 0 0;3 0 0|3|4 numbers where a point of one port needs 3",
        "# GHz S RI;1 0 0;2 0|3|the file ends within a point",
        "# GHz S RI;1 0 0;-2 0 0|3|is negative",
        "# GHz S RI;1 0 0;[Reference] 50;2 0 0|3|belongs to version 2",
        "1 0 0;# GHz S RI;2 0 0|1|before the option line (line 2)",
        "# GHz S RI;1 2;2 2;3 2|2|2 numbers where a point of one port needs 3",
        "# GHz S RI|0|no data",
        "! only a comment|0|nothing but comments",
        "# DB;1 99999 0|2|too large"
    })
    void aFaultIsNamedWithItsLine(String lines, int line, String words) {
        assertRefused(lines.replace(';', '\n'), "a.s1p", Fixture.REFLECTION, line, words);
    }

    @Test
    void twoPortFaultsNameTheLineOfThePoint() {
        String good = "# GHz S RI\n1 0 0 .5 0 .5 0 0 0\n";
        assertRefused(good + "2 0 0 .5 0 .5 0 0\n3 0 0 .5 0 .5 0 0 0\n", "a.s2p", Fixture.SHUNT_THROUGH, 3, "8 numbers where a point of two ports needs 9");
        assertRefused(good + "2 0 0 .5 0 .5 0 0 0 7\n", "a.s2p", Fixture.SHUNT_THROUGH, 3, "10 numbers");
        assertRefused("# GHz S RI\n1 0\n2 0\n", "a.s2p", Fixture.SHUNT_THROUGH, 2, "2 numbers where a point of two ports needs 9");
        assertRefused("# GHz S RI\n1 0\n2 0\n", "sweep.txt", Fixture.SHUNT_THROUGH, 2, "one port needs 3 and a point of two ports 9");
    }

    @Test
    void directCurrentIsDroppedAndSaid() {
        ReadSweep sweep = read("# kHz Z RI R 1\n0 1 0\n1 2 0\n2 3 0\n", "a.s1p", Fixture.IMPEDANCE);
        assertThat(sweep.frequencyHz()).containsExactly(1e3, 2e3);
        assertThat(sweep.warnings()).containsExactly("Dropped 1 point at 0 Hz.");
    }

    @Test
    void fallingFrequenciesAreTurnedRoundAndSaid() {
        ReadSweep sweep = read("# kHz Z RI R 1\n3 3 0\n2 2 0\n1 1 0\n", "a.s1p", Fixture.IMPEDANCE);
        assertThat(sweep.frequencyHz()).containsExactly(1e3, 2e3, 3e3);
        assertThat(sweep.resistanceOhm()).containsExactly(1, 2, 3);
        assertThat(sweep.warnings()).singleElement().asString().contains("turned round");
    }

    @Test
    void disorderedAndRepeatedFrequenciesAreSortedAndSaid() {
        ReadSweep sweep = read("# kHz Z RI R 1\n1 1 0\n3 3 0\n2 2 0\n3 9 0\n", "a.s1p", Fixture.IMPEDANCE);
        assertThat(sweep.frequencyHz()).containsExactly(1e3, 2e3, 3e3);
        assertThat(sweep.resistanceOhm()).containsExactly(1, 2, 3);
        assertThat(sweep.warnings()).hasSize(2).anySatisfy(w -> assertThat(w).contains("sorted"))
                .anySatisfy(w -> assertThat(w).contains("Dropped 1 point", "3 kHz", "first value was kept"));
    }

    @Test
    void disorderedTwoPortDataAreNotTakenForNoise() {
        ReadSweep sweep = read("# GHz S RI\n3 0 0 .5 0 .5 0 0 0\n1 0 0 .6 0 .6 0 0 0\n", "a.s2p", Fixture.SHUNT_THROUGH);
        assertThat(sweep.frequencyHz()).containsExactly(1e9, 3e9);
    }
}
