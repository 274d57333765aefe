package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import org.stillrail.account.Role;
import org.stillrail.document.Sha256;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;
import org.stillrail.sweepfile.SweepWriter;

@AppTest
class SweepImportTest {

    @Autowired
    MockMvc mvc;

    @Autowired
    TestPeople people;

    @Autowired
    Library library;

    @Autowired
    Parts parts;

    @Autowired
    FixtureSweeps fixtures;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Clock clock;

    @Test
    void thePreviewShowsFindingsAndStoresNothing() throws Exception {
        Part part = part("IMPORT-PREVIEW");
        byte[] wrong = SweepBench.csv(new SeriesRlc(3e-6, 4e-3, 1.2e-9));
        preview(part, "a.csv", wrong)
                .andExpect(content().string(containsString("off the datasheet")))
                .andExpect(content().string(containsString("&quot;label&quot;:&quot;off the datasheet&quot;")))
                .andExpect(content().string(containsString("what is usual stands in")));
        assertThat(library.sweepsOf(part.id())).isEmpty();
    }

    @Test
    void everyFileOfAnArchiveGetsALineAndTheReadableOnesAreStored() throws Exception {
        Part part = part("IMPORT-MANY");
        byte[] zip = zip("sweeps/a.csv", SweepBench.csv(SweepBench.PIECE), "sweeps/broken.csv", "no numbers here".getBytes(StandardCharsets.UTF_8),
                "b.csv", SweepBench.csv(new SeriesRlc(20e-6, 4e-3, 1.2e-9)), "a-again.csv", SweepBench.csv(SweepBench.PIECE));
        store(part, "all.zip", zip).andExpect(status().isOk())
                .andExpect(content().string(containsString("2 of 4 files are stored")))
                .andExpect(content().string(containsString("Cannot be read")))
                .andExpect(content().string(containsString("of this part already; not stored twice")));
        assertThat(library.sweepsOf(part.id())).extracting(Sweep::fileName).containsExactlyInAnyOrder("a.csv", "b.csv");
        assertThat(library.sweepsOf(part.id())).extracting(sweep -> sweep.provenance().sample()).containsOnly("S1");
    }

    @Test
    void archivesThatAreMadeToHarmAreRefusedInWordsAndNothingIsStored() throws Exception {
        Part part = part("IMPORT-BOMB");
        int before = rawFiles();
        byte[] good = SweepBench.csv(SweepBench.PIECE);
        store(part, "bomb.zip", zip("a.csv", good, "zeros.csv", new byte[19 * 1024 * 1024]))
                .andExpect(content().string(containsString("times its size")));
        store(part, "climb.zip", zip("a.csv", good, "../../etc/b.csv", good)).andExpect(content().string(containsString("no plain path inside it")));
        byte[] lying = zip("a.csv", good);
        // The stated length stands in the data descriptor, 22 bytes of end record and one central entry before the end.
        lying[lying.length - 22 - 46 - "a.csv".length() - 4] ^= 0x55;
        store(part, "lying.zip", lying).andExpect(content().string(containsString("lies about the length")));
        assertThat(library.sweepsOf(part.id())).isEmpty();
        assertThat(rawFiles()).isEqualTo(before);
    }

    @Test
    void aMappingIsKeptUnderANameAndReadsTheNextFile() throws Exception {
        Part part = part("IMPORT-MAPPING");
        byte[] silent = "a;b;c\n1000;20;-7500\n10000;20;-750\n100000;20;-75\n".getBytes(StandardCharsets.UTF_8);
        String sha = Sha256.of(silent);
        mvc.perform(request("/library/parts/{id}/sweeps", part).file(SweepBench.file("silent.csv", silent))
                        .param("columnsOf", sha).param("column1", "frequency").param("column2", "resistance").param("unit2", "mOhm")
                        .param("column3", "reactance").param("unit3", "mOhm").param("saveMappingAs", "bench 4, milliohm")
                        .with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(header().exists("HX-Redirect"));
        assertThat(library.sweepsOf(part.id()).get(0).document().resistanceOhm()[0]).isEqualTo(0.02);
        String id = jdbc.sql("select id from column_mapping where name = 'bench 4, milliohm'").query(String.class).single();
        byte[] next = "x;y;z\n1000;30;-7400\n10000;30;-740\n100000;30;-74\n".getBytes(StandardCharsets.UTF_8);
        mvc.perform(request("/library/parts/{id}/sweeps", part).file(SweepBench.file("next.csv", next)).param("savedMapping", id)
                .with(people.as(Role.ENGINEER)).with(csrf())).andExpect(header().exists("HX-Redirect"));
        assertThat(library.sweepsOf(part.id())).anySatisfy(sweep -> assertThat(sweep.document().resistanceOhm()[0]).isEqualTo(0.03));
    }

    @Test
    void aShortThatIsChosenByNameIsTakenOut() throws Exception {
        Part part = part("IMPORT-SHORT");
        FrequencyGrid grid = FrequencyGrid.logSpaced(50, 20e6, 281);
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        Arrays.fill(r, 2e-3);
        for (int i = 0; i < x.length; i++) {
            x[i] = grid.omega(i) * 0.5e-9;
        }
        byte[] shorted = SweepWriter.csv(new Curve(grid, r, x), List.of()).getBytes(StandardCharsets.UTF_8);
        MockMultipartHttpServletRequestBuilder add = multipart("/library/fixtures");
        add.file(SweepBench.file("short.csv", shorted)).param("name", "Test clamp, short").param("standard", "short").param("fixture", "impedance")
                .param("measuredBy", "someone").param("measuredOn", "2031-03-03").param("instrument", "invented");
        mvc.perform(add.with(people.as(Role.ENGINEER)).with(csrf())).andExpect(redirectedUrl("/library/fixtures"));
        FixtureSweep fixture = fixtures.all().stream().filter(one -> one.name().equals("Test clamp, short")).findFirst().orElseThrow();

        SeriesRlc inFixture = new SeriesRlc(21e-6, 4e-3 + 2e-3, 1.2e-9 + 0.5e-9);
        mvc.perform(request("/library/parts/{id}/sweeps", part).file(SweepBench.file("in.csv", SweepBench.csv(inFixture)))
                        .param("shortFixture", fixture.id().toString()).with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(header().exists("HX-Redirect"));
        SweepDocument stored = library.sweepsOf(part.id()).get(0).document();
        Curve expected = SweepBench.curve(SweepBench.PIECE, grid);
        for (int i = 0; i < grid.size(); i++) {
            assertThat(stored.resistanceOhm()[i]).isCloseTo(4e-3, within(1e-9));
            assertThat(stored.reactanceOhm()[i]).isCloseTo(expected.imaginary(i), within(1e-9 * expected.magnitude(i) + 1e-12));
        }
        assertThat(stored.warnings()).anyMatch(warning -> warning.contains("Test clamp, short"));
        assertThat(stored.setup().shortId()).isEqualTo(fixture.id());
    }

    @Test
    void aWordForAnAccuracyIsRefusedAndKept() throws Exception {
        Part part = part("IMPORT-WRONG");
        mvc.perform(request("/library/parts/{id}/sweeps", part).file(SweepBench.file("a.csv", SweepBench.csv(SweepBench.PIECE)))
                        .param("accuracyImpedance", "good").with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(content().string(containsString("&#39;good&#39; is not a number")))
                .andExpect(content().string(containsString("value=\"good\"")));
        assertThat(library.sweepsOf(part.id())).isEmpty();
    }

    @Test
    void aHundredThousandPointsAreReadAndDrawnThinned() throws Exception {
        Part part = part("IMPORT-LONG");
        byte[] bytes = SweepWriter.csv(SweepBench.curve(SweepBench.PIECE, FrequencyGrid.logSpaced(50, 20e6, 100_000)), List.of())
                .getBytes(StandardCharsets.UTF_8);
        store(part, "long.csv", bytes).andExpect(header().exists("HX-Redirect"));
        Sweep sweep = library.sweepsOf(part.id()).get(0);
        assertThat(sweep.points()).isEqualTo(100_000);
        String page = mvc.perform(get("/library/sweeps/{id}", sweep.id())
                .with(people.as(Role.VIEWER))).andExpect(status().isOk()).andReturn().getResponse().getContentAsString();
        assertThat(page.length()).isLessThan(4_000_000);
    }

    private ResultActions preview(Part part, String name, byte[] bytes) throws Exception {
        return mvc.perform(request("/library/parts/{id}/sweeps/preview", part).file(SweepBench.file(name, bytes)).with(people.as(Role.ENGINEER)).with(csrf()));
    }

    private ResultActions store(Part part, String name, byte[] bytes) throws Exception {
        return mvc.perform(request("/library/parts/{id}/sweeps", part).file(SweepBench.file(name, bytes)).with(people.as(Role.ENGINEER)).with(csrf()));
    }

    private MockMultipartHttpServletRequestBuilder request(String path, Part part) {
        return SweepBench.provenance(path, part.id(), "S1", people.with(Role.ENGINEER));
    }

    private Part part(String number) {
        return parts.insert(SweepBench.part(number), Vetting.PROPOSED, null, people.with(Role.ENGINEER), OffsetDateTime.now(clock));
    }

    private int rawFiles() {
        return jdbc.sql("select count(*) from raw_file").query(Integer.class).single();
    }

    private static byte[] zip(Object... namesAndBytes) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (int i = 0; i < namesAndBytes.length; i += 2) {
                zip.putNextEntry(new ZipEntry((String) namesAndBytes[i]));
                zip.write((byte[]) namesAndBytes[i + 1]);
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
