package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import org.stillrail.verification.Source;

/** Short ways to read a file given as text, and to compare what comes out. */
final class SweepText {

    private SweepText() {
    }

    static Source specification(String place) {
        return Source.seen("Touchstone File Format Specification, version 2.1, IBIS Open Forum, 2024, " + place);
    }

    static ReadSweep read(String text, String name, Fixture fixture) {
        return read(text, name, ReadOptions.of(fixture));
    }

    static ReadSweep read(String text, String name, ReadOptions options) {
        return SweepReader.read(text.getBytes(StandardCharsets.UTF_8), name, options);
    }

    static SweepFileException refusal(String text, String name, Fixture fixture) {
        return refusal(text, name, ReadOptions.of(fixture));
    }

    static SweepFileException refusal(String text, String name, ReadOptions options) {
        SweepFileException refused = catchThrowableOfType(SweepFileException.class, () -> read(text, name, options));
        assertThat(refused).as("the file is refused").isNotNull();
        return refused;
    }

    static void assertRefused(String text, String name, Fixture fixture, int line, String words) {
        SweepFileException refused = refusal(text, name, fixture);
        assertThat(refused).hasMessageContaining(words);
        assertThat(refused.lineNumber()).as(refused.getMessage()).isEqualTo(line);
    }

    static void assertRelative(double actual, double expected, double tolerance) {
        assertThat(Math.abs(actual - expected)).as("%s against %s", actual, expected)
                .isLessThanOrEqualTo(tolerance * Math.abs(expected));
    }
}
