package org.stillrail.sweepfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.stillrail.sweepfile.SweepText.assertRefused;
import static org.stillrail.sweepfile.SweepText.read;

import java.time.Duration;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;

class LimitsTest {

    @Test
    void twoHundredThousandPointsAreReadAndNotOneMore() {
        String header = "# Hz Z RI R 1\n";
        StringBuilder lines = new StringBuilder(header);
        for (int i = 1; i <= 200_000; i++) {
            lines.append(i).append(" 1 0\n");
        }
        assertThat(read(lines.toString(), "a.s1p", Fixture.IMPEDANCE).points()).isEqualTo(200_000);
        assertRefused(lines + "200001 1 0\n", "a.s1p", Fixture.IMPEDANCE, 200_002, "more than 200,000 points");
        String table = "f,R,X\n" + lines.substring(header.length()).replace(' ', ',');
        assertThat(read(table, "a.csv", Fixture.IMPEDANCE).points()).isEqualTo(200_000);
        assertRefused(table + "200001,1,0\n", "a.csv", Fixture.IMPEDANCE, 200_002, "more than 200,000 points");
    }

    @Test
    void moreThanTwentyMebibytesAreRefused() {
        Assertions.assertThatThrownBy(() -> SweepReader.read(new byte[20 * 1024 * 1024 + 1], "a.s1p", ReadOptions.of(Fixture.REFLECTION)))
                .isInstanceOf(SweepFileException.class).hasMessageContaining("at most 20 MiB");
    }

    @Test
    void tooManyLinesAndTooLongLinesAreRefused() {
        assertRefused("#\n" + "1\n".repeat(1_000_000), "a.s1p", Fixture.REFLECTION, 1_000_001, "more than a million lines");
        assertRefused("f,R,X\n1,2,3\n" + "1,".repeat(50_001) + "\n", "a.csv", Fixture.IMPEDANCE, 3, "longer than 100,000 characters");
    }

    /** The time limit stops a pattern that tries every way to split the blanks; it is no measure of speed. */
    @Test
    void aHeadingOfBlanksDoesNotHang() {
        String blanks = "a" + " ".repeat(90_000) + "b";
        assertTimeoutPreemptively(Duration.ofSeconds(60), () ->
                assertThat(read("f,R,X," + blanks + "\n1,2,3,4\n", "a.csv", Fixture.IMPEDANCE).points()).isEqualTo(1));
    }

    @Test
    void aLineOfTooManyColumnsIsRefused() {
        assertRefused("1,2,3\n" + "1,".repeat(1001) + "\n", "a.csv", Fixture.IMPEDANCE, 2, "more than 1000 columns");
    }
}
