package org.stillrail.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class DemoSweepsTest {

    static final List<DemoSweep> SWEEPS = DemoSweeps.ALL;

    @ParameterizedTest
    @FieldSource("SWEEPS")
    void generatorReproducesTheCommittedFile(DemoSweep sweep) throws IOException {
        assertThat(Files.readAllBytes(DemoSweeps.FOLDER.resolve(sweep.file()))).isEqualTo(sweep.content());
    }

    @Test
    void folderHoldsNothingElse() throws IOException {
        try (Stream<Path> files = Files.list(DemoSweeps.FOLDER)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(DemoSweeps.ALL.stream().map(DemoSweep::file).toList());
        }
    }

    @ParameterizedTest
    @FieldSource("SWEEPS")
    void sweepIsDenseEnoughForInterpolation(DemoSweep sweep) {
        double[] hz = sweep.grid().frequenciesHz();
        double decades = Math.log10(hz[hz.length - 1] / hz[0]);

        assertThat(hz.length).isBetween(60, 400);
        assertThat((hz.length - 1) / decades).isGreaterThan(19.9);
    }
}
