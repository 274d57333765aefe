package org.stillrail.electrical.capacitor;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class CeramicCodeTest {

    private static final Source EIA_198 = Source.seenSecondHand("EIA-198-1-F, class codes, as four public pages reproduce them");

    /** CC-01 and CC-02. */
    @ParameterizedTest
    @CsvSource({
        "X7R, -55, 125, -15, 15", "X5R, -55, 85, -15, 15", "X6S, -55, 105, -22, 22", "X7S, -55, 125, -22, 22",
        "X7T, -55, 125, -33, 22", "X8R, -55, 150, -15, 15", "Y5V, -30, 85, -82, 22", "Z5U, 10, 85, -56, 22",
        "x6t, -55, 105, -33, 22"})
    void classTwo(String code, double low, double high, double least, double most) {
        CeramicCode read = CeramicCode.find(code).orElseThrow();
        assertThat(read.classOne()).isFalse();
        Check.that(Topic.CHARACTERISTICS, "Class 2 code " + code + ": temperatures")
                .source(EIA_198).expected("degC", low, high).got(read.lowC(), read.highC());
        Check.that(Topic.CHARACTERISTICS, "Class 2 code " + code + ": largest change of capacitance against 25 degC")
                .source(EIA_198).expected("%", least, most).absolute(1e-10)
                .got(100 * (read.shareAt(high).least() - 1), 100 * (read.shareAt(low).most() - 1));
        assertThat(read.shareAt(25)).isEqualTo(Band.ONE);
        assertThat(read.covers(high)).isTrue();
        assertThat(read.covers(high + 1)).isFalse();
        assertThat(read.covers(low - 1)).isFalse();
    }

    /** CC-04. */
    @ParameterizedTest
    @CsvSource({"C0G, 0, 30", "U2J, -750, 120", "R2H, -220, 60", "S2H, -330, 60", "P2H, -150, 60", "NP0, 0, 30"})
    void classOne(String code, double ppm, double tolerance) {
        CeramicCode read = CeramicCode.find(code).orElseThrow();
        assertThat(read.classOne()).isTrue();
        Check.that(Topic.CHARACTERISTICS, "Class 1 code " + code + ": coefficient and its tolerance")
                .source(EIA_198).expected("ppm/K", ppm, tolerance).absolute(1e-9)
                .got((read.least() + read.most()) / 2, (read.most() - read.least()) / 2);
    }

    @ParameterizedTest
    @CsvSource({"2C1, -55, 125, -20, 20", "2R1, -55, 125, -15, 15", "2F4, -25, 85, -80, 30", "2E6, 10, 85, -56, 22"})
    void classTwoOfTheOtherStandard(String code, double low, double high, double least, double most) {
        CeramicCode read = CeramicCode.find(code).orElseThrow();
        Check.that(Topic.CHARACTERISTICS, "Class 2 code " + code + ": temperatures and largest change")
                .source(Source.fromMemory("IEC 60384-9 and -22")).expected("degC and %", low, high, least, most).got(read.lowC(), read.highC(), read.least(), read.most());
        assertThat(read.classOne()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"CG, C0G", "1B/CG, C0G", "UJ, U2J", "RH, R2H", "sh, S2H", "PH, P2H"})
    void classOneOfTheOtherStandard(String code, String same) {
        CeramicCode read = CeramicCode.find(code).orElseThrow();
        CeramicCode known = CeramicCode.find(same).orElseThrow();
        Check.that(Topic.CHARACTERISTICS, "Class 1 code " + code + ": the coefficients of " + same)
                .source(Source.fromMemory("IEC 60384-8 and -21")).expected("ppm/K", known.least(), known.most()).absolute(1e-9).got(read.least(), read.most());
    }

    /** CC-05: 30 ppm/K over 80 K and 100 K. */
    @Test
    void bandOfC0gOverItsRange() {
        CeramicCode c0g = CeramicCode.find("C0G").orElseThrow();
        Check.that(Topic.CHARACTERISTICS, "C0G: band at -55 degC and at 125 degC, 30 ppm/K over 80 K and 100 K")
                .source(EIA_198).expected("%", 0.24, 0.3, -0.24, -0.3).absolute(1e-9)
                .got(100 * (c0g.shareAt(-55).most() - 1), 100 * (c0g.shareAt(125).most() - 1),
                        100 * (c0g.shareAt(-55).least() - 1), 100 * (c0g.shareAt(125).least() - 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "X7", "2Q1", "2C9", "QG", "Q7R", "X0R", "X7Z", "X7RR"})
    void unknownCodesAreNotGuessed(String code) {
        assertThat(CeramicCode.find(code)).isEmpty();
    }

    /** CC-06: linear in the logarithm; the last case is stated against one hour. */
    @ParameterizedTest
    @CsvSource({
        "2.5, 1000, 24, -4.0494719", "2.5, 87600, 1000, -4.85626027", "5, 87600, 1000, -9.71252053",
        "7, 87600, 1000, -13.5975287", "2.5, 1000, 1, -7.5"})
    void ageingIsLinearInTheLogarithmOfTime(double percent, double hours, double referee, double expected) {
        Check.that(Topic.CHARACTERISTICS, "Ageing by %s %% per decade-hour from %s h to %s h, linear in the logarithm".formatted(percent, referee, hours))
                .source(Source.fromMemory("EIA-198 (referee time) and IEC 60384-9 and -22 (ageing)"))
                .expected("%", expected).absolute(1e-7).got(100 * (new Ageing(percent, referee).share(hours) - 1));
        assertThat(new Ageing(percent, referee).share(null)).isEqualTo(1);
    }

    /** CC-08. */
    @Test
    void usualAgeingGoesByTheLastLetter() {
        Band x7r = CeramicCode.find("X7R").orElseThrow().usualAgeingPercent();
        Check.that(Topic.CHARACTERISTICS, "X7R: usual ageing a decade-hour, least and most")
                .source(Source.seenSecondHand("two public ceramic data pages")).expected("%", 1, 4).got(x7r.least(), x7r.most());
        Band c0g = CeramicCode.find("C0G").orElseThrow().usualAgeingPercent();
        Check.that(Topic.CHARACTERISTICS, "C0G: usual ageing a decade-hour, least and most")
                .source(Source.seenSecondHand("two public ceramic data pages")).expected("%", 0, 0).got(c0g.least(), c0g.most());
        assertThat(CeramicCode.find("X7S").orElseThrow().usualAgeingPercent()).isEqualTo(CeramicCode.find("Z5U").orElseThrow().usualAgeingPercent());
        assertThat(CeramicCode.find("2R1").orElseThrow().usualAgeingPercent()).isEqualTo(x7r);
    }
}
