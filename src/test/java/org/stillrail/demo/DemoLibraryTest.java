package org.stillrail.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.library.PartDocument;
import org.stillrail.library.SweepProvenance;
import org.stillrail.library.Vetting;
import tools.jackson.databind.JsonNode;

class DemoLibraryTest {

    private static final JsonNode PARTS = DemoFile.read("library", "parts.json");
    private static final JsonNode SWEEPS = DemoFile.read("library", "sweeps.json");

    @Test
    void everyPartIsAPartDocumentWithAReasonForItsState() {
        assertThat(PARTS.valueStream()).hasSizeGreaterThanOrEqualTo(25).allSatisfy(entry -> {
            PartDocument part = DemoFile.as(entry.get("part"), PartDocument.class);
            assertThat(part.capacitanceF()).isPositive();
            assertThat(part.losses()).as(part.partNumber()).isNotEmpty();
            assertThat(part.inductanceH() == null).as(part.partNumber()).isEqualTo(part.selfResonanceHz() != null);
            assertThat(part.datasheet().page()).isNotBlank();
            assertThat(entry.get("vettingReason").stringValue()).isNotBlank();
        });
    }

    @Test
    void everyTechnologyAndEveryVettingStateOccurs() {
        assertThat(parts()).extracting(PartDocument::technology).contains(Technology.values());
        assertThat(DemoFile.texts(PARTS, "vetting"))
                .contains(Arrays.stream(Vetting.values()).map(Vetting::name).toArray(String[]::new));
    }

    @Test
    void partNumbersDiffer() {
        assertThat(parts()).extracting(PartDocument::partNumber).doesNotHaveDuplicates();
    }

    @Test
    void everySweepFileIsListedOnceForAPartThatExists() {
        assertThat(DemoFile.texts(SWEEPS, "file"))
                .containsExactlyInAnyOrderElementsOf(DemoSweeps.ALL.stream().map(DemoSweep::file).toList());
        assertThat(parts()).extracting(PartDocument::partNumber).containsAll(DemoFile.texts(SWEEPS, "partNumber"));
    }

    @Test
    void provenanceAgreesWithTheFile() {
        Map<String, DemoSweep> made = DemoSweeps.ALL.stream().collect(Collectors.toMap(DemoSweep::file, Function.identity()));
        assertThat(SWEEPS.valueStream()).allSatisfy(entry -> {
            DemoSweep sweep = made.get(entry.get("file").stringValue());
            SweepProvenance provenance = DemoFile.as(entry.get("provenance"), SweepProvenance.class);
            assertThat(entry.get("fixture").stringValue()).isEqualTo(sweep.bench().word()).isEqualTo(provenance.fixture());
            assertThat(sweep.remark())
                    .startsWith(entry.get("partNumber").stringValue() + " sample " + provenance.sample())
                    .contains(Decimals.fixed(provenance.temperatureC(), 0) + " degC");
        });
    }

    @Test
    void chosenModelIsASweepOfTheSamePart() {
        List<JsonNode> choosing = PARTS.valueStream().filter(entry -> entry.has("modelSweep")).toList();
        assertThat(choosing).isNotEmpty().allSatisfy(entry -> assertThat(SWEEPS.valueStream())
                .anySatisfy(sweep -> {
                    assertThat(sweep.get("partNumber")).isEqualTo(entry.get("part").get("partNumber"));
                    assertThat(sweep.get("file")).isEqualTo(entry.get("modelSweep").get("file"));
                }));
    }

    private static List<PartDocument> parts() {
        return PARTS.valueStream().map(entry -> DemoFile.as(entry.get("part"), PartDocument.class)).toList();
    }
}
