package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.stillrail.sweepfile.SweepText.assertRefused;
import static org.stillrail.sweepfile.SweepText.assertRelative;
import static org.stillrail.sweepfile.SweepText.read;
import static org.stillrail.sweepfile.SweepText.refusal;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Values worked by hand: at w = 1e6 rad/s, 1 uF is -1 j ohm, 1 uH is 1 j ohm and 1 S is 1 ohm. */
class DelimitedReaderTest {

    /** Hz of 1e6 rad/s. */
    private static final String F = "159154.94309189535";

    @ParameterizedTest
    @ValueSource(strings = {
        "freq/Hz,Re(Z)/Ohm,-Im(Z)/Ohm\n1000,2.5,-1.25\n2000,3.5,1.5\n",
        "freq/Hz;Re(Z)/Ohm;-Im(Z)/Ohm\r\n1000;2,5;-1,25\r\n2000;3,5;1,5\r\n",
        "freq/Hz\tRe(Z)/Ohm\t-Im(Z)/Ohm\t\r1.0E+003\t2.5E+000\t-1.25E+000\t\r2.0E+003\t3.5\t1.5\t\r",
        "Freq (kHz)  Z' (Ohm)  -Z'' (Ohm)\n   1   2.5  -1.25\n   2   3.5   1.5\n",
        "Frequency Hz|\nfrequency;R;X\nkHz;mOhm;Ohm\n1;2500;1,25\n2;3500;-1,5\n",
        "! invented\n# settings: 3 4 5 \n\nFrequency [Hz],Time,Z_real (Ohm),Z_imag (Ohm)\n1000,12:30:01,2.5,1.25\n2000,12:30:05,3.5,-1.5\n",
        "\"Frequency, Hz\",\"R, Ohm\",\"X, Ohm\"\n\"1000\",\"2.5\",\"1.25\"\n\"2000\",\"3.5\",\"-1.5\"\n",
        "# f/Hz Re(Z)/Ohm Im(Z)/Ohm\n1000 2.5 1.25\n2000 3.5 -1.5\n",
        "freq/Hz;Re(Z)/Ohm;Im(Z)/Ohm\n2000;3,5;-1,5\n1000;2,5;1,25\n",
        "TABLE\n\tPt\tFreq\tZreal\tZimag\tIdc\n\t#\tHz\tohm\tohm\tA\n\t0\t1000\t2.5\t1.25\t0\n\t1\t2000\t3.5\t-1.5\t0\n",
        "  Freq(Hz), Ampl, Z'(a), Z''(b)\nEnd Header:\n 1.0E+03, 0.1, 2.5, 1.25\n 2.0E+03, 0.1, 3.5, -1.5\n",
        "sep=;\nfreq[Hz];re:Z;im:Z;\n1000;2,5;1,25;\n2000;3,5;-1,5;\n\u001a",
        "freq/Hz;Re(Z)/Ohm;Im(Z)/Ohm\n0;0;0\n1000;2,5;1,25\n2000;3,5;-1,5\n"
    })
    void layoutsAndHeadingsAreFoundAutomatically(String file) {
        ReadSweep sweep = read(file, "sweep.csv", Fixture.IMPEDANCE);
        assertThat(sweep.frequencyHz()).containsExactly(1000, 2000);
        assertThat(sweep.resistanceOhm()).containsExactly(2.5, 3.5);
        assertThat(sweep.reactanceOhm()).containsExactly(1.25, -1.5);
        assertThat(sweep.referenceOhm()).isNull();
        assertThat(sweep.format()).startsWith("Delimited text, ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE", "ISO-8859-1"})
    void encodingsAreRecognised(String charset) {
        String file = "freq/Hz;Re(Z)/Ohm;Phase/\u00b0;-Im(Z)/Ohm\n1000;2,5;0;-1,25\n";
        ReadSweep sweep = SweepReader.read(file.getBytes(Charset.forName(charset)), "a.csv", ReadOptions.of(Fixture.IMPEDANCE));
        assertThat(sweep.resistanceOhm()).containsExactly(2.5);
        assertThat(sweep.reactanceOhm()).containsExactly(1.25);
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstHeading() {
        ReadSweep sweep = read("\ufefffreq/Hz,R,X\n1000,2,3\n", "a.csv", Fixture.IMPEDANCE);
        assertThat(sweep.frequencyHz()).containsExactly(1000);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', value = {
        "Rs,Ls~2,3e-6~2~3", "Rs (Ohm),Ls (uH)~2,3~2~3", "Rs,Cs (uF)~2,0.5~2~-2", "Cs (uF),D~0.5,0.1~0.2~-2", "Cs (uF),Q~0.5,10~0.2~-2",
        "Ls (uH),Q~3,10~0.3~3", "Cp (uF),D~1,0~0~-1", "Cp (uF),D~0.5,1~1~-1", "Cp (uF),Q~0.5,1~1~-1", "Cp (uF),G (S)~0.5,0.5~1~-1",
        "Cp (uF),Rp (Ohm)~0.5,2~1~-1", "G (S),B (S)~0.5,-0.5~1~1", "|Y| (S),arg(Y) (deg)~0.5,-90~0~2", "|Z|,Phase (deg)~2,-90~0~-2",
        "|Z|/mOhm,Phase (rad)~2000,1.5707963267948966~0~2", "|Z|,-Phase(Z)/deg~2,90~0~-2"
    })
    void everyPairOfKindsMakesAnImpedance(String headings, String values, double r, double x) {
        ReadSweep sweep = read("f/Hz," + headings + "\n" + F + "," + values + "\n", "a.csv", Fixture.IMPEDANCE);
        Check.that(Topic.FILES, "Columns " + headings + " of " + values + " at 1e6 rad/s: R and X")
                .source(Source.independent("definitions of the equivalent circuits, by hand")).expected("ohm", r, x).absolute(1e-9)
                .got(sweep.resistanceOhm()[0], sweep.reactanceOhm()[0]);
    }

    /** Row SZ-01 and SZ-03: S21 of 0.5 is 25 ohm in shunt and 100 ohm in series; S11 of 0.6 is 200 ohm (reference 50). */
    @ParameterizedTest
    @CsvSource(delimiter = '~', value = {
        "S21(DB),S21(DEG)~-6.020599913279624,0~SHUNT_THROUGH~25", "|S21|/dB,Phase/deg~-6.020599913279624,0~SERIES_THROUGH~100",
        "S21(REAL),S21(IMAG)~0.5,0~SHUNT_THROUGH~25", "S11(REAL),S11(IMAG)~0.6,0~REFLECTION~200", "|S11|,arg(S11)~0.6,0~REFLECTION~200"
    })
    void scatteringColumnsAreConvertedByTheFixture(String headings, String values, Fixture fixture, double ohm) {
        ReadSweep sweep = read("f/Hz," + headings + "\n1000," + values + "\n", "a.csv", fixture);
        assertRelative(sweep.resistanceOhm()[0], ohm, 1e-12);
        assertThat(sweep.referenceOhm()).isEqualTo(50);
    }

    @Test
    void theFixtureChoosesAmongSeveralQuantities() {
        String file = "f/Hz,R,X,S11(REAL),S11(IMAG),S21(REAL),S21(IMAG)\n1000,7,0,0.6,0,0.5,0\n";
        assertRelative(read(file, "a.csv", Fixture.IMPEDANCE).resistanceOhm()[0], 7, 1e-12);
        assertRelative(read(file, "a.csv", Fixture.REFLECTION).resistanceOhm()[0], 200, 1e-12);
        assertRelative(read(file, "a.csv", Fixture.SHUNT_THROUGH).resistanceOhm()[0], 25, 1e-12);
    }

    @Test
    void aMappingGoesBeforeTheHeadings() {
        String file = "a;b;c;d\n9;1,5;2000;-3\n8;2,5;4000;-6\n";
        ReadSweep sweep = read(file, "a.csv", ReadOptions.of(Fixture.IMPEDANCE)
                .withColumns(ColumnMapping.parse("frequency=2:kHz, resistance=3:mOhm, reactance=-4")));
        assertThat(sweep.frequencyHz()).containsExactly(1500, 2500);
        assertThat(sweep.resistanceOhm()).containsExactly(2, 4);
        assertThat(sweep.reactanceOhm()).containsExactly(3, 6);
        assertThat(sweep.format()).isEqualTo("Delimited text, semicolon, decimal comma; frequency from column 2 'b' in kHz,"
                + " resistance from column 3 'c' in mOhm, reactance from column 4 'd' negated");
    }

    @Test
    void aMappingMayFixDelimiterAndReference() {
        ReadSweep sweep = read("1,5 0,5 0\n2,5 0,5 0\n", "a.csv", ReadOptions.of(Fixture.SHUNT_THROUGH)
                .withColumns(ColumnMapping.parse("frequency=1, s21-real=2, s21-imaginary=3, reference=100, delimiter=space, decimal=comma")));
        assertThat(sweep.frequencyHz()).containsExactly(1.5, 2.5);
        assertRelative(sweep.resistanceOhm()[0], 50, 1e-12);
        assertThat(sweep.referenceOhm()).isEqualTo(100);
    }

    @Test
    void anImpedanceTakesAnyFixtureAndSaysSo() {
        ReadSweep sweep = read("f,R,X\n1,2,3\n", "a.csv", Fixture.SHUNT_THROUGH);
        assertThat(sweep.resistanceOhm()).containsExactly(2);
        assertThat(sweep.warnings()).singleElement().asString().contains("impedance already");
    }

    @Test
    void scatteringColumnsRefuseTheWrongFixture() {
        assertRefused("f,S21(REAL),S21(IMAG)\n1,0.5,0\n", "a.csv", Fixture.REFLECTION, 0, "choose shunt-through or series-through");
        assertRefused("f,S21(REAL),S21(IMAG)\n1,0.5,0\n", "a.csv", Fixture.IMPEDANCE, 0, "choose shunt-through or series-through");
        assertRefused("f,S11(REAL),S11(IMAG)\n1,0.5,0\n", "a.csv", Fixture.SHUNT_THROUGH, 0, "choose reflection");
    }

    @Test
    void headingsThatDoNotMakeAWholeAreRefusedInWords() {
        assertRefused("1,2,3\n4,5,6\n", "a.csv", Fixture.IMPEDANCE, 0, "the file has no headings");
        assertRefused("time,R,X\n1,2,3\n", "a.csv", Fixture.IMPEDANCE, 1, "no heading names the frequency");
        assertRefused("\nf,R,Temperature\n1,2,3\n", "a.csv", Fixture.IMPEDANCE, 2, "no pair that makes an impedance");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
        "f,R,X;1,2,3;2,x,3;3,2,3|3|column 2 (resistance) is 'x', which is not a finite number",
        "f,R,X;1,2,3;2,NaN,3;3,2,3|3|column 2 (resistance) is 'NaN'",
        "f,R,X;1,2,3;2,,3;3,2,3|3|column 2 (resistance) is empty",
        "f,R,X;1,2,3;2,3;3,2,3|3|column 3 (reactance) is missing; the line has 2 columns",
        "f,R,X;1,2,3;-2,2,3;3,2,3|3|the frequency '-2' is negative",
        "f,R,X;1,2,3;oops;3,2,3|3|'oops' stands where a row of numbers should",
        "f,R,X;1,2,3;3,2,3;oops|4|'oops' stands where a row of numbers should",
        "f,R,X;1,2,3;1e308,1e308,1e999|3|column 3 (reactance) is '1e999'"
    })
    void aFaultIsNamedWithItsLine(String lines, int line, String words) {
        assertRefused(lines.replace(';', '\n'), "a.csv", Fixture.IMPEDANCE, line, words);
    }

    @Test
    void whatIsNoTableIsRefused() {
        assertRefused("Dear all,\nplease find attached\n", "a.csv", Fixture.IMPEDANCE, 0, "No line of numbers was found");
        assertRefused("a\u0000b", "a.csv", Fixture.IMPEDANCE, 1, "not a text file");
        assertRefused("", "a.csv", Fixture.IMPEDANCE, 0, "empty");
    }

    @Test
    void sweepsBelowEachOtherAreToldApartByAColumn() {
        String file = "loop_index,f/Hz,R,X\n0,100,1,0\n0,10,2,0\n0,0,0,0\n1,100,3,0\n1,10,4,0\n1,0,0,0\n2,100,5,0\n2,10,6,0\n";
        ReadSweep first = read(file, "a.csv", Fixture.IMPEDANCE);
        assertThat(first.frequencyHz()).containsExactly(10, 100);
        assertThat(first.resistanceOhm()).containsExactly(2, 1);
        assertThat(first.warnings()).contains("The file holds 3 sweeps one below the other; the first was read.",
                "Dropped 1 point at 0 Hz.");
        ReadSweep second = read(file, "a.csv", ReadOptions.of(Fixture.IMPEDANCE).withBlock(2));
        assertThat(second.resistanceOhm()).containsExactly(4, 3);
        assertThat(second.warnings()).contains("Sweep 2 of 3 in the file was read.");
        assertThat(refusal(file, "a.csv", ReadOptions.of(Fixture.IMPEDANCE).withBlock(4)))
                .hasMessageContaining("holds 3 sweeps; there is no number 4");
    }

    @Test
    void sweepsBelowEachOtherAreToldApartByTheFrequencyOrARepeatedHeading() {
        String rising = "f,R,X\n1,1,0\n10,2,0\n100,3,0\n1,4,0\n10,5,0\n100,6,0\n";
        assertThat(read(rising, "a.csv", ReadOptions.of(Fixture.IMPEDANCE).withBlock(2)).resistanceOhm()).containsExactly(4, 5, 6);
        String repeated = "f,R,X\n1,1,0\n10,2,0\n\nSecond\nwith a note\nf,R,X\n20,4,0\n30,5,0\n";
        assertThat(read(repeated, "a.csv", ReadOptions.of(Fixture.IMPEDANCE).withBlock(2)).resistanceOhm()).containsExactly(4, 5);
    }

    @Test
    void aSweepThereAndBackIsOneSweep() {
        ReadSweep sweep = read("f,R,X\n1,1,0\n10,2,0\n100,3,0\n10,4,0\n1,5,0\n", "a.csv", Fixture.IMPEDANCE);
        assertThat(sweep.resistanceOhm()).containsExactly(1, 2, 3);
        assertThat(sweep.warnings()).hasSize(2);
    }

    @Test
    void aColumnThatCountsPointsIsNoSweepNumber() {
        ReadSweep sweep = read("Trace 1,f/Hz,R,X\n1,1,1,0\n2,10,2,0\n3,100,3,0\n", "a.csv", ReadOptions.of(Fixture.IMPEDANCE)
                .withColumns(ColumnMapping.parse("frequency=2, resistance=3, reactance=4, block=1")));
        assertThat(sweep.points()).isEqualTo(3);
    }

    @Test
    void anInstrumentsBeginAndEndLinesAreNoData() {
        ReadSweep sweep = read("!analyser, invented\n!Date 1\nBEGIN CH1_DATA\nFreq(Hz),S11(REAL),S11(IMAG)\n1,0.6,0\n2,0.6,0\nEND\n", "a.csv",
                Fixture.REFLECTION);
        assertThat(sweep.points()).isEqualTo(2);
    }

    @Test
    void theTableOfTheSweepIsFoundBelowALongerOne() {
        String other = "\t1\t0.1\t3.3\t0\n".repeat(30);
        ReadSweep sweep = read("OPEN\tTABLE\n\tPt\tT\tVf\tAch\n\t#\ts\tV\tV\n" + other
                + "CURVE\tTABLE\n\tPt\tFreq\tZreal\tZimag\tIdc\n\t#\tHz\tohm\tohm\tA\n\t0\t1000\t2.5\t1.25\t0\n\t1\t2000\t3.5\t-1.5\t0\n",
                "a.txt", Fixture.IMPEDANCE);
        assertThat(sweep.frequencyHz()).containsExactly(1000, 2000);
        assertThat(sweep.resistanceOhm()).containsExactly(2.5, 3.5);
    }

    @Test
    void aHeadingThatStandsTwiceIsSaid() {
        assertThat(read("f,R,X,R,X\n1,2,3,4,5\n", "a.csv", Fixture.IMPEDANCE).warnings()).containsExactly(
                "2 columns are headed as resistance; column 2 was read.", "2 columns are headed as reactance; column 3 was read.");
    }

    @Test
    void aPhaseThatMayBeRadiansIsQuestioned() {
        assertThat(read("f,|Z|,Phase\n1,2,1.57\n", "a.csv", Fixture.IMPEDANCE).warnings()).singleElement().asString()
                .contains("may be radians");
        assertThat(read("f,|Z|,Phase/deg\n1,2,1.57\n", "a.csv", Fixture.IMPEDANCE).warnings()).isEmpty();
    }

    @Test
    void infiniteImpedancesAreDroppedAndNamed() {
        ReadSweep sweep = read("f/kHz,Rs,Cs\n1,1,0\n2,1,1e-6\n", "a.csv", Fixture.IMPEDANCE);
        assertThat(sweep.frequencyHz()).containsExactly(2000);
        assertThat(sweep.warnings()).singleElement().asString().contains("Dropped 1 point where the impedance is infinite", "1 kHz");
    }

    @Test
    void aPreviewShowsWhatWasFound() {
        String file = "invented instrument\nfreq/Hz;Re(Z)/Ohm;-Im(Z)/Ohm;Temp\n1000;2,5;-1,25;20\n2000;3,5;1,5;21\n";
        TextPreview preview = SweepReader.preview(file.getBytes(StandardCharsets.UTF_8), null, null);
        assertThat(preview.delimiter()).isEqualTo(Delimiter.SEMICOLON);
        assertThat(preview.decimalComma()).isTrue();
        assertThat(preview.headingLine()).isEqualTo(2);
        assertThat(preview.firstDataLine()).isEqualTo(3);
        assertThat(preview.columns()).extracting(TextPreview.Column::kind)
                .containsExactly(ColumnKind.FREQUENCY, ColumnKind.RESISTANCE, ColumnKind.REACTANCE, null);
        assertThat(preview.columns().get(2).negated()).isTrue();
        assertThat(preview.columns().get(1).samples()).containsExactly("2,5", "3,5");
        assertThat(preview.proposal().toText()).isEqualTo("frequency=1:Hz, resistance=2:Ohm, reactance=-3:Ohm");
        assertThat(preview.rows()).hasSize(2);
        TextPreview bare = SweepReader.preview("1 2 3\n4 5 6\n".getBytes(StandardCharsets.UTF_8), null, null);
        assertThat(bare.proposal()).isNull();
        assertThat(bare.note()).isEqualTo("the file has no headings");
    }
}
