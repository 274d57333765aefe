package org.stillrail.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ReadOptions;
import org.stillrail.sweepfile.ReadSweep;
import org.stillrail.sweepfile.SweepReader;

/**
 * The product's readers against the models that the files were made from. Model, fixture and noise are written here a second
 * time and apart from the product, so an error in a fixture's formula, a unit or a column shows.
 */
class DemoSweepsReadingTest {

    /** For complex normal noise a larger error has a probability of exp(-5.5^2 / 2), 3e-7 a point. */
    private static final double LARGEST_DEVIATIONS = 5.5;

    static final List<DemoSweep> SWEEPS = DemoSweeps.ALL;

    @ParameterizedTest
    @FieldSource("SWEEPS")
    void readerFindsTheModelWithinTheNoise(DemoSweep sweep) throws IOException {
        ReadSweep read = read(sweep);
        List<Reading> made = sweep.readings();
        double[] hz = read.frequencyHz();
        double[] resistance = read.resistanceOhm();
        double[] reactance = read.reactanceOhm();
        double squares = 0;

        assertThat(read.points()).isEqualTo(made.size());
        for (int i = 0; i < hz.length; i++) {
            Reading reading = made.get(i);
            assertThat(hz[i]).isCloseTo(reading.hz(), withinPercentage(1e-9));
            double error = new Phasor(resistance[i], reactance[i]).minus(reading.truth()).magnitude()
                    / sweep.bench().deviationOhm(reading.truth());
            assertThat(error).as("at %s Hz", reading.hz()).isLessThan(LARGEST_DEVIATIONS);
            squares += error * error;
        }
        assertThat(Math.sqrt(squares / hz.length / 2)).as("noise over its declared deviation").isBetween(0.8, 1.25);
    }

    @ParameterizedTest
    @FieldSource("SWEEPS")
    void readerWarnsOnlyOfFallingFrequencyAndOfNegativeResistance(DemoSweep sweep) throws IOException {
        ReadSweep read = read(sweep);
        List<String> expected = new ArrayList<>();
        if (sweep.format() instanceof CellTable) {
            expected.add("frequencies fall");
        }
        if (Arrays.stream(read.resistanceOhm()).anyMatch(ohm -> ohm < 0)) {
            expected.add("resistance is negative");
        }

        assertThat(read.warnings()).hasSameSizeAs(expected);
        assertThat(expected).allSatisfy(words ->
                assertThat(read.warnings()).anySatisfy(warning -> assertThat(warning).contains(words)));
    }

    private static ReadSweep read(DemoSweep sweep) throws IOException {
        return SweepReader.read(Files.readAllBytes(DemoSweeps.FOLDER.resolve(sweep.file())), sweep.file(),
                ReadOptions.of(Fixture.of(sweep.bench().word())));
    }
}
