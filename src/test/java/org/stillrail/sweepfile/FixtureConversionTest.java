package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.stillrail.sweepfile.SweepText.assertRefused;
import static org.stillrail.sweepfile.SweepText.assertRelative;
import static org.stillrail.sweepfile.SweepText.read;
import static org.stillrail.sweepfile.SweepText.refusal;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Two-port circuit theory, rows SZ-01 to SZ-06. */
class FixtureConversionTest {

    private static final Source THEORY = Source.fromMemory(
            "two-port theory: K. Kurokawa 1965, D. M. Pozar, Microwave Engineering; recomputed by chain matrix and divider in Python");

    @ParameterizedTest
    @CsvSource({
        "0.001,0,3.999840006399744e-05,0", "0.01,0,0.00039984006397441024,0", "0.1,0,0.00398406374501992,0",
        "1,0,0.038461538461538464,0", "25,0,0.5,0", "1000,0,0.9756097560975611,0",
        "0.005,-0.0318,0.0002015770189809354,-0.0012714892961726218"
    })
    void shuntThrough(double r, double x, double s21Re, double s21Im) {
        assertThroughReader("Shunt-through, Z = 25 ohm S21 / (1 - S21)", Fixture.SHUNT_THROUGH, r, x, "1 0 0 " + s21Re + " " + s21Im + " 0 0 0 0");
        Complex s = ScatteringImpedance.scattering(Fixture.SHUNT_THROUGH, new Complex(r, x), 50);
        assertThat(s.minus(new Complex(s21Re, s21Im)).magnitude()).isLessThanOrEqualTo(1e-9 * s.magnitude());
    }

    @ParameterizedTest
    @CsvSource({
        "0.01,0,0.9999000099990001,0", "1,0,0.9900990099009901,0", "100,0,0.5,0", "1000,0,0.09090909090909091,0",
        "100000,0,0.000999000999000999,0", "3,400,0.060371961619844206,-0.2344542198828901"
    })
    void seriesThrough(double r, double x, double s21Re, double s21Im) {
        assertThroughReader("Series-through, Z = 100 ohm (1 - S21) / S21", Fixture.SERIES_THROUGH, r, x, "1 0 0 " + s21Re + " " + s21Im + " 0 0 0 0");
        Complex s = ScatteringImpedance.scattering(Fixture.SERIES_THROUGH, new Complex(r, x), 50);
        assertThat(s.minus(new Complex(s21Re, s21Im)).magnitude()).isLessThanOrEqualTo(1e-9 * s.magnitude());
    }

    @ParameterizedTest
    @CsvSource({
        "0.01,0,-0.9996000799840032,0", "1,0,-0.9607843137254902,0", "50,0,0,0", "200,0,0.6,0",
        "1,-20,-0.6994335221592802,-0.6664445184938355", "25,50,0.07692307692307689,0.6153846153846153"
    })
    void reflection(double r, double x, double gammaRe, double gammaIm) {
        assertThroughReader("Reflection, Z = 50 ohm (1 + S11) / (1 - S11)", Fixture.REFLECTION, r, x, "1 " + gammaRe + " " + gammaIm);
        Complex gamma = ScatteringImpedance.scattering(Fixture.REFLECTION, new Complex(r, x), 50);
        assertThat(gamma.minus(new Complex(gammaRe, gammaIm)).magnitude()).isLessThanOrEqualTo(1e-9);
    }

    private static void assertThroughReader(String name, Fixture fixture, double r, double x, String point) {
        ReadSweep sweep = read("# MHz S RI R 50\n" + point + "\n", "", fixture);
        Check.that(Topic.FILES, name + ", from S of a file to R and X").source(THEORY).expected("ohm", r, x).relativeToLargest(1e-9)
                .got(sweep.resistanceOhm()[0], sweep.reactanceOhm()[0]);
    }

    /** SZ-05: Z11 of Example 14 of the specification is not what S11 alone gives; here Z data are read as they stand. */
    @Test
    void impedanceParametersOfTwoPorts() {
        String file = "# MHz Z RI R 1\n1 11 1 21 2 12 3 22 4\n";
        assertRelative(read(file, "a.s2p", Fixture.SHUNT_THROUGH).resistanceOhm()[0], 21, 1e-12);
        ReadSweep first = read(file, "a.s2p", Fixture.IMPEDANCE);
        assertRelative(first.resistanceOhm()[0], 11, 1e-12);
        assertThat(first.warnings()).containsExactly("Of the two ports, Z11 was read; port 2 was taken as it was measured: it is open.");
        ReadSweep second = read(file, "a.s2p", ReadOptions.of(Fixture.IMPEDANCE).withPort(2));
        assertRelative(second.resistanceOhm()[0], 22, 1e-12);
        assertThat(second.warnings()).singleElement().asString().contains("Z22 was read; port 1");
    }

    /** 1/Y11 and -1/Y21: 0.25 S is 4 ohm; -(0.1 j) S in the transfer is 1/(0.1 j) = -10 j ohm. */
    @Test
    void admittanceParameters() {
        assertRelative(read("# MHz Y RI R 1\n1 0.25 0\n", "a.s1p", Fixture.IMPEDANCE).resistanceOhm()[0], 4, 1e-12);
        String file = "# MHz Y RI R 1\n1 0 .1 0 -.1 0 -.1 0 .1\n";
        ReadSweep series = read(file, "a.s2p", Fixture.SERIES_THROUGH);
        assertThat(series.resistanceOhm()[0]).isZero();
        assertRelative(series.reactanceOhm()[0], -10, 1e-12);
        assertRelative(read(file, "a.s2p", Fixture.REFLECTION).reactanceOhm()[0], -10, 1e-12);
    }

    /** SZ-06: references of 50 and 25 ohm brought to 50 ohm. */
    @Test
    void unequalReferencesAreRenormalisedFirst() {
        String file = "# MHz S RI R 50 25\n1 .2 .1 .5 -.2 .5 -.2 -.1 .3\n";
        NetworkData data = Renormalisation.toFirstPort(Touchstone.read(file, "a.s2p").data());
        double[] re = {0.2732989690721649, 0.4694605846228212, 0.4694605846228221, -0.4432989690721648};
        double[] im = {0.042577319587628865, -0.13704749985883607, -0.137047499858836, 0.2474226804123711};
        Source waves = SweepText.specification("wave definitions, p. 8; changed from 50 and 25 ohm to 50 ohm in Python by two routes");
        double[] gotRe = new double[4];
        double[] gotIm = new double[4];
        for (int entry = 0; entry < 4; entry++) {
            gotRe[entry] = data.re()[entry][0];
            gotIm[entry] = data.im()[entry][0];
        }
        Check.that(Topic.FILES, "Unequal references of 50 and 25 ohm brought to 50 ohm: real parts of S").source(waves).expected("", re).relative(1e-9).got(gotRe);
        Check.that(Topic.FILES, "Unequal references of 50 and 25 ohm brought to 50 ohm: imaginary parts of S").source(waves).expected("", im).relative(1e-9).got(gotIm);
        ReadSweep sweep = read(file, "a.s2p", Fixture.SHUNT_THROUGH);
        Complex s21 = new Complex(re[1], im[1]);
        Complex expected = s21.over(Complex.ONE.minus(s21)).times(25);
        assertRelative(sweep.resistanceOhm()[0], expected.re(), 1e-9);
        assertRelative(sweep.reactanceOhm()[0], expected.im(), 1e-9);
        assertThat(sweep.referenceOhm()).isEqualTo(50);
        assertThat(sweep.warnings()).singleElement().asString().contains("unequal references (50 and 25 ohm)");
    }

    @Test
    void theOtherPortOfAReflectionIsSaid() {
        ReadSweep sweep = read("# MHz S RI R 50\n1 .6 0 .5 0 .5 0 0 0\n", "a.s2p", Fixture.REFLECTION);
        assertRelative(sweep.resistanceOhm()[0], 200, 1e-12);
        assertThat(sweep.warnings()).singleElement().asString().contains("S11 was read; port 2", "reference resistance");
        assertRelative(read("# MHz S RI R 50\n1 .6 0 .5 0 .5 0 0 0\n", "a.s2p", ReadOptions.of(Fixture.REFLECTION).withPort(2))
                .resistanceOhm()[0], 50, 1e-12);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "S|1 0 0|SHUNT_THROUGH|one port, so it cannot be read as shunt-through; choose reflection",
        "Z|1 0 0|SERIES_THROUGH|one port, so it cannot be read as series-through; choose impedance",
        "S|1 0 0|IMPEDANCE|S parameters, not an impedance; choose reflection",
        "S|1 0 0 0 0 0 0 0 0|IMPEDANCE|choose reflection, shunt-through or series-through",
        "Z|1 0 0 0 0 0 0 0 0|SERIES_THROUGH|choose shunt-through (Z21) or impedance (Z11)",
        "Y|1 0 0 0 0 0 0 0 0|SHUNT_THROUGH|choose series-through (-1/Y21) or impedance (1/Y11)"
    })
    void combinationsWithoutMeaningSayWhatToChoose(String parameter, String point, Fixture fixture, String words) {
        assertRefused("# MHz " + parameter + " RI R 50\n" + point + "\n", "", fixture, 0, words);
    }

    @Test
    void aSecondPortThatIsNotThereIsRefused() {
        assertThat(refusal("# MHz S RI\n1 0 0\n", "a.s1p", ReadOptions.of(Fixture.REFLECTION).withPort(2)))
                .hasMessageContaining("port 2 cannot be read");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "1 1 0;2 0 0|REFLECTION|S11 is 1",
        "1 0 0 1 0 1 0 0 0;2 0 0 .5 0 .5 0 0 0|SHUNT_THROUGH|S21 is 1",
        "1 0 0 0 0 0 0 0 0;2 0 0 .5 0 .5 0 0 0|SERIES_THROUGH|S21 is 0"
    })
    void pointsOutOfTheFixturesReachAreDroppedAndNamed(String points, Fixture fixture, String words) {
        ReadSweep sweep = read("# MHz S RI R 50\n" + points.replace(';', '\n') + "\n", "", fixture);
        assertThat(sweep.frequencyHz()).containsExactly(2e6);
        assertThat(sweep.warnings()).anySatisfy(w -> assertThat(w).contains("Dropped 1 point", words, "1 MHz"));
        assertRefused("# MHz S RI R 50\n" + points.substring(0, points.indexOf(';')) + "\n", "", fixture, 0, "No point is left");
    }

    @Test
    void negativeResistanceAndZeroImpedanceAreSaid() {
        ReadSweep sweep = read("# MHz Z RI R 1\n1 -1 0\n2 0 0\n3 1 0\n", "a.s1p", Fixture.IMPEDANCE);
        assertThat(sweep.points()).isEqualTo(3);
        assertThat(sweep.warnings()).containsExactly("The resistance is negative at 1 of 3 points: 1 MHz.",
                "The impedance is exactly zero at 1 point: 2 MHz.");
    }
}
