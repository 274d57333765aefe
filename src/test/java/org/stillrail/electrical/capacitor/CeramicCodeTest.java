package org.stillrail.electrical.capacitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Class codes of EIA-198 as four public copies reproduce them; seen second-hand. Ageing law from memory, recomputed. */
class CeramicCodeTest {

    /** CC-02. */
    @ParameterizedTest
    @CsvSource({
        "X7R, -55, 125, -15, 15", "X5R, -55, 85, -15, 15", "X6S, -55, 105, -22, 22", "X7S, -55, 125, -22, 22",
        "X7T, -55, 125, -33, 22", "X8R, -55, 150, -15, 15", "Y5V, -30, 85, -82, 22", "Z5U, 10, 85, -56, 22",
        "x6t, -55, 105, -33, 22"})
    void classTwo(String code, double low, double high, double least, double most) {
        CeramicCode read = CeramicCode.find(code).orElseThrow();
        assertThat(read.classOne()).isFalse();
        assertThat(read.lowC()).isEqualTo(low);
        assertThat(read.highC()).isEqualTo(high);
        assertThat(read.shareAt(high).least()).isCloseTo(1 + least / 100, within(1e-12));
        assertThat(read.shareAt(low).most()).isCloseTo(1 + most / 100, within(1e-12));
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
        assertThat(read.least()).isCloseTo(ppm - tolerance, within(1e-9));
        assertThat(read.most()).isCloseTo(ppm + tolerance, within(1e-9));
    }

    /** CC-05: 30 ppm/K over 80 K and 100 K. */
    @Test
    void bandOfC0gOverItsRange() {
        CeramicCode c0g = CeramicCode.find("C0G").orElseThrow();
        assertThat(100 * (c0g.shareAt(-55).most() - 1)).isCloseTo(0.24, within(1e-9));
        assertThat(100 * (c0g.shareAt(125).most() - 1)).isCloseTo(0.3, within(1e-9));
        assertThat(100 * (c0g.shareAt(-55).least() - 1)).isCloseTo(-0.24, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "X7", "Q7R", "X0R", "X7Z", "X7RR"})
    void unknownCodesAreNotGuessed(String code) {
        assertThat(CeramicCode.find(code)).isEmpty();
    }

    /** CC-06: linear in the logarithm; the last case is stated against one hour. */
    @ParameterizedTest
    @CsvSource({
        "2.5, 1000, 24, -4.0494719", "2.5, 87600, 1000, -4.85626027", "5, 87600, 1000, -9.71252053",
        "7, 87600, 1000, -13.5975287", "2.5, 1000, 1, -7.5"})
    void ageingIsLinearInTheLogarithmOfTime(double percent, double hours, double referee, double expected) {
        assertThat(100 * (new Ageing(percent, referee).share(hours) - 1)).isCloseTo(expected, within(1e-7));
        assertThat(new Ageing(percent, referee).share(null)).isEqualTo(1);
    }

    /** CC-08. */
    @Test
    void usualAgeingGoesByTheLastLetter() {
        assertThat(CeramicCode.find("X7R").orElseThrow().usualAgeingPercent()).contains(new Band(1, 2.5, 4));
        assertThat(CeramicCode.find("C0G").orElseThrow().usualAgeingPercent()).contains(Band.exactly(0));
        assertThat(CeramicCode.find("X7S").orElseThrow().usualAgeingPercent()).isEmpty();
    }
}
