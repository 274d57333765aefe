package org.stillrail.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bench.MountingBounds;
import org.stillrail.electrical.bench.MountingFit;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.NumberColumns;
import org.stillrail.sweepfile.ReadOptions;
import org.stillrail.sweepfile.SweepReader;
import org.stillrail.sweepfile.accuracy.FixtureCompensation;
import tools.jackson.databind.JsonNode;

class DemoBenchTest {

    static final List<DemoSweep> FIXTURES = DemoFixtures.ALL;

    private static final JsonNode RECORDS = DemoFile.read("bench", "records.json");

    @Test
    void generatorReproducesTheCommittedFiles() throws IOException {
        for (Map.Entry<String, byte[]> file : DemoBench.files().entrySet()) {
            assertThat(Files.readAllBytes(DemoBench.FOLDER.resolve(file.getKey()))).as(file.getKey()).isEqualTo(file.getValue());
        }
    }

    @ParameterizedTest
    @FieldSource("FIXTURES")
    void generatorReproducesTheCommittedFixture(DemoSweep sweep) throws IOException {
        assertThat(Files.readAllBytes(DemoFixtures.FOLDER.resolve(sweep.file()))).isEqualTo(sweep.content());
    }

    @Test
    void theFoldersHoldNothingElseAndEveryFileIsListedOnce() throws IOException {
        List<String> made = new ArrayList<>(DemoBench.files().keySet());
        assertThat(DemoFile.texts(RECORDS, "file")).containsExactlyInAnyOrderElementsOf(made);
        made.add("records.json");
        assertThat(names(DemoBench.FOLDER)).containsExactlyInAnyOrderElementsOf(made);
        List<String> fixtures = DemoFixtures.ALL.stream().map(DemoSweep::file).toList();
        assertThat(names(DemoFixtures.FOLDER)).containsExactlyInAnyOrderElementsOf(fixtures);
        assertThat(DemoFile.texts(DemoFile.read("library", "fixtures.json").get("sweeps"), "file")).containsExactlyInAnyOrderElementsOf(fixtures);
    }

    /** The ceramics of the board are another lot than their sheet, so more than the mountings differs; the inductance stands out all the same. */
    @Test
    void fittedMountingsCloseTheGapBetweenTheBankAndItsBoard() throws IOException {
        Bank composed = new DemoModels().bank(composedBank());
        Curve board = read(DemoBench.FOLDER.resolve("logic-5v0-board-1.s2p"));
        MountingFit fit = MountingFit.of(composed, board, MountingBounds.BELIEVABLE);
        assertThat(fit.before()).isGreaterThan(20);
        assertThat(fit.after()).isLessThan(6);
        // The inner inductance of the electrodes is not in the sheet's ESL, so the fit finds a little more than the pads.
        assertThat(fit.mountings().get(1).after().inductanceH()).isCloseTo(DemoBench.CERAMIC_H, within(0.25 * DemoBench.CERAMIC_H));
    }

    @Test
    void theFixtureTakesItselfOut() throws IOException {
        Curve open = read(DemoFixtures.FOLDER.resolve("coupon-t2-open.s2p"));
        Curve shorted = read(DemoFixtures.FOLDER.resolve("coupon-t2-short.s2p"));
        Curve load = read(DemoFixtures.FOLDER.resolve("coupon-t2-load.s2p"));
        Curve bare = FixtureCompensation.byOpenShort(load, open, shorted);
        for (int i = 0; i < bare.size(); i++) {
            assertThat(bare.real(i)).as("at %g Hz", bare.grid().hz(i)).isCloseTo(10, within(0.05));
            assertThat(bare.imaginary(i)).isCloseTo(0, within(0.05));
        }
    }

    @Test
    void everyTraceRises() throws IOException {
        for (String file : DemoBench.files().keySet().stream().filter(name -> name.endsWith(".csv")).toList()) {
            double[] first = NumberColumns.read(Files.readAllBytes(DemoBench.FOLDER.resolve(file)), 2).columns().get(0);
            assertThat(first).as(file).isSorted().hasSizeGreaterThan(80);
        }
    }

    private static JsonNode composedBank() {
        JsonNode record = RECORDS.get(0);
        return DemoFile.read("projects.json").get("projects").valueStream().flatMap(project -> project.get("rails").valueStream())
                .filter(rail -> rail.get("name").equals(record.get("rail"))).flatMap(rail -> rail.get("banks").valueStream())
                .filter(bank -> bank.get("name").equals(record.get("bank"))).findFirst().orElseThrow()
                .get("revisions").get(record.get("revision").intValue() - 1);
    }

    private static Curve read(Path file) throws IOException {
        return SweepReader.read(Files.readAllBytes(file), file.getFileName().toString(), ReadOptions.of(Fixture.SHUNT_THROUGH)).impedance();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
