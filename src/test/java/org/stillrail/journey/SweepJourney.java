package org.stillrail.journey;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A librarian brings a measured file into the library. */
@Browsing
class SweepJourney {

    /** A capacitor of 100 uF with 20 mohm, in milliohm and with -Im Z, of which the headings say nothing. */
    private static final byte[] SILENT_HEADINGS = ("""
            f;R;X\r
            1000;20;1591.5\r
            10000;20;159.15\r
            100000;20;15.915\r
            """).getBytes(StandardCharsets.US_ASCII);

    private final JdbcClient jdbc;

    @Autowired
    SweepJourney(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Test
    void correctsTheColumnsStoresTheSweepAndGivesItToBanks(Visitor librarian) throws IOException {
        librarian.signInAs("librarian");
        propose("DIPPER-100U-10", librarian);

        SweepImportPage page = SweepImportPage.of("DIPPER-100U-10", librarian);
        page.chooseFile("dipper.csv", SILENT_HEADINGS);
        page.says("3 points from 1 kHz to 100 kHz");
        String magnitudeBefore = page.firstValue("Magnitude as the file is read now");
        String phaseBefore = page.firstValue("Phase as the file is read now");
        assertThat(magnitudeBefore).contains("k\u03a9");
        assertThat(phaseBefore).startsWith("89");

        page.setUnit(2, "mOhm");
        page.setUnit(3, "mOhm");
        page.negate(3);
        assertThat(page.firstValue("Magnitude as the file is read now")).isNotEqualTo(magnitudeBefore).contains("1.59");
        assertThat(page.firstValue("Phase as the file is read now")).matches("[-\u2212]89.*");
        assertThat(sweepsNamed("dipper.csv")).isZero();

        librarian.fill("Sample", "D1");
        page.store();
        librarian.sees("Instrument is missing");
        librarian.sees("nothing was stored and what you typed is still here");
        assertThat(page.chosenFile()).isEqualTo("dipper.csv");
        assertThat(librarian.field("Sample").inputValue()).isEqualTo("D1");
        assertThat(sweepsNamed("dipper.csv")).isZero();

        librarian.fill("Instrument and calibration", "bench bridge, calibrated 2026-01");
        page.store();
        librarian.seesHeading("Sweep dipper.csv");
        librarian.sees("bench bridge, calibrated 2026-01");
        assertThat(librarian.questions()).as("a stored sweep is not unsaved work").isEmpty();
        Download raw = librarian.page().waitForDownload(() -> librarian.follow("Download the raw file"));
        assertThat(raw.suggestedFilename()).isEqualTo("dipper.csv");
        assertThat(Files.readAllBytes(raw.path())).isEqualTo(SILENT_HEADINGS);

        SweepImportPage again = SweepImportPage.of("DIPPER-100U-10", librarian);
        again.chooseFile("copy-of-dipper.csv", SILENT_HEADINGS);
        again.says("The same bytes were imported before");
        again.says("dipper.csv by Ysbrand Lockhollow");
        librarian.agrees(true);

        librarian.openPart("DIPPER-100U-10");
        librarian.choose("Model", "Sweep dipper.csv, sample D1");
        librarian.press("Choose the model");
        librarian.sees("The reason is missing");
        librarian.choose("Model", "Sweep dipper.csv, sample D1");
        librarian.fill("Why this one", "The sheet states no ESR");
        librarian.press("Choose the model");
        librarian.sees("lends the chosen model to banks from now on");
        librarian.sees("measured: dipper.csv");
        librarian.sees("Why: The sheet states no ESR");
    }

    @Test
    void aBrokenTouchstoneFileIsRefusedWithItsLine(Visitor librarian) {
        librarian.signInAs("librarian");
        SweepImportPage page = SweepImportPage.of("STORK-1U-63", librarian);
        byte[] broken = """
                ! three points, one of them spoilt
                # HZ S RI R 50
                1.0e3 0.1 0.2
                2.0e3 0.1 O.2
                4.0e3 0.1 0.2
                """.getBytes(StandardCharsets.US_ASCII);
        page.chooseFile("broken.s1p", broken);
        page.says("broken.s1p cannot be read like this");
        page.says("Line 4");
        page.says("O.2");
        librarian.fill("Instrument and calibration", "bench bridge");
        page.store();
        librarian.sees("Nothing was stored.");
        assertThat(page.chosenFile()).isEqualTo("broken.s1p");
        assertThat(sweepsNamed("broken.s1p")).isZero();
    }

    @Test
    void aFileOverTheLimitIsRefusedInWords(Visitor librarian) {
        librarian.signInAs("librarian");
        SweepImportPage page = SweepImportPage.of("STORK-1U-63", librarian);
        librarian.fill("Sample", "kept");
        librarian.expectStatus(413);
        page.chooseFile("long.csv", new byte[20 * 1024 * 1024 + 1]);
        librarian.sees("The file is larger than 20 MiB");
        page.store();
        librarian.sees("The file is larger than 20 MiB");
        assertThat(librarian.field("Sample").inputValue()).isEqualTo("kept");
        assertThat(sweepsNamed("long.csv")).isZero();
    }

    static void propose(String partNumber, Visitor librarian) {
        librarian.open("/library");
        librarian.follow("Propose a part");
        librarian.fill("Capacitance (F)", "100 parsecs");
        librarian.fill("Rated voltage (V)", "-10");
        librarian.press("Propose the part");
        librarian.sees("fields need attention");
        librarian.sees("Part number is missing");
        assertThat(librarian.field("Capacitance (F)").inputValue()).isEqualTo("100 parsecs");
        assertThat(librarian.field("Rated voltage (V)").inputValue()).isEqualTo("-10");

        PartForm.fill(partNumber, librarian);
        librarian.press("Propose the part");
        librarian.seesHeading(partNumber);
        librarian.sees(partNumber + " is proposed");
    }

    private int sweepsNamed(String fileName) {
        return jdbc.sql("select count(*) from sweep where file_name = :name").param("name", fileName).query(Integer.class).single();
    }
}
