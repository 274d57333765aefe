package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
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
import java.util.UUID;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
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
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.curve.Complex;
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

    /** Class 1 ceramics up to a nanofarad are stated at 1 MHz, where a fifth too much is off the sheet. */
    @Test
    void aClassOneCeramicIsHeldAgainstItsSheetAtOneMegahertz() throws Exception {
        PartDocument like = SweepBench.part("IMPORT-CLASS-1");
        PartDocument sheet = new PartDocument(like.partNumber(), like.maker(), Technology.CERAMIC_CLASS_1, 1e-9, new PartDocument.Tolerance(5, 5), 50,
                List.of(), 0.5e-9, null, null, null, null, null, null, null, null, null, null, null, null, ModelChoice.DATASHEET, null, null, null);
        Part part = parts.insert(sheet, Vetting.PROPOSED, null, people.with(Role.ENGINEER), OffsetDateTime.now(clock));
        preview(part, "good.csv", SweepBench.csv(new SeriesRlc(1.02e-9, 0.1, 0.5e-9))).andExpect(content().string(not(containsString("off the datasheet"))));
        preview(part, "off.csv", SweepBench.csv(new SeriesRlc(1.2e-9, 0.1, 0.5e-9)))
                .andExpect(content().string(allOf(containsString("off the datasheet"), containsString("C at 1 MHz"))));
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

    /** A fixture of 20 mohm and 1 nH in series and 40 pF across: open and short take it out to the last digits. */
    @Test
    void openAndShortThatAreChosenByNameAreTakenOut() throws Exception {
        Part part = part("IMPORT-OPEN-SHORT");
        String open = stored("T3, open", "open", null, omega -> series(omega).plus(across(omega)));
        String shorted = stored("T3, short", "short", null, SweepImportTest::series);
        byte[] inFixture = inFixture(omega -> series(omega).plus(piece(omega).reciprocal().plus(across(omega).reciprocal()).reciprocal()));
        mvc.perform(request("/library/parts/{id}/sweeps", part).file(SweepBench.file("in.csv", inFixture))
                        .param("openFixture", open).param("shortFixture", shorted).with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(header().exists("HX-Redirect"));
        assertIsThePiece(part, "T3, open and T3, short");
        mvc.perform(request("/library/parts/{id}/sweeps", part).file(SweepBench.file("alone.csv", inFixture))
                        .param("openFixture", open).with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(content().string(containsString("Choose the short alone, open and short, or all three")));
    }

    /** Some fixture that mixes, (a Z + b) / (c Z + 1) with complex a, b and c: only all three take it out. */
    @Test
    void openShortAndLoadThatAreChosenByNameAreTakenOut() throws Exception {
        Part part = part("IMPORT-OSL");
        Complex a = new Complex(1.1, 0.2);
        Complex b = new Complex(0.03, 0.01);
        Complex c = new Complex(1e-4, -3e-4);
        UnaryOperator<Complex> mixed = z -> a.times(z).plus(b).over(c.times(z).plus(new Complex(1, 0)));
        String open = stored("T4, open", "open", null, omega -> a.over(c));
        String shorted = stored("T4, short", "short", null, omega -> b);
        String load = stored("T4, load", "load", "49.9", omega -> mixed.apply(new Complex(49.9, 0)));
        mvc.perform(request("/library/parts/{id}/sweeps", part).file(SweepBench.file("in.csv", inFixture(omega -> mixed.apply(piece(omega)))))
                        .param("openFixture", open).param("shortFixture", shorted).param("loadFixture", load).with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(header().exists("HX-Redirect"));
        assertIsThePiece(part, "T4, load (49.9");
    }

    /** A line of 120 ps in front of the part turns its reflection; the port extension turns it back. */
    @Test
    void aPortExtensionIsTakenOutOfAReflection() throws Exception {
        Part part = part("IMPORT-DELAY");
        double delayS = 120e-12;
        StringBuilder touchstone = new StringBuilder("# Hz S RI R 50\n");
        for (double hz : GRID.toArray()) {
            double omega = 2 * Math.PI * hz;
            Complex reference = new Complex(50, 0);
            Complex s11 = piece(omega).minus(reference).over(piece(omega).plus(reference)).times(Complex.polar(1, -2 * omega * delayS));
            touchstone.append(hz).append(' ').append(s11.re()).append(' ').append(s11.im()).append('\n');
        }
        MockMultipartHttpServletRequestBuilder send = multipart("/library/parts/{id}/sweeps", part.id());
        send.file(SweepBench.file("turned.s1p", touchstone.toString().getBytes(StandardCharsets.UTF_8)))
                .param("fixture", "reflection").param("measuredBy", "someone").param("measuredOn", "2031-03-04").param("instrument", "invented")
                .param("bias", "0").param("temperature", "25").param("port", "1").param("portDelay", "120p");
        mvc.perform(send.with(people.as(Role.ENGINEER)).with(csrf())).andExpect(header().exists("HX-Redirect"));
        SweepDocument stored = library.sweepsOf(part.id()).get(0).document();
        for (int i = 0; i < GRID.size(); i++) {
            assertThat(stored.resistanceOhm()[i]).as("%g Hz", GRID.hz(i)).isCloseTo(4e-3, within(1e-6));
            assertThat(stored.reactanceOhm()[i]).isCloseTo(piece(GRID.omega(i)).im(), within(1e-6 * (1 + Math.abs(piece(GRID.omega(i)).im()))));
        }
        assertThat(stored.warnings()).anyMatch(warning -> warning.contains("port extension of 120"));
        assertThat(stored.setup().portDelayS()).isEqualTo(delayS);
    }

    @Test
    void theSameBytesAreSaidLinkedAndStoredOnceMoreOnlyOnRequest() throws Exception {
        Part part = part("IMPORT-TWICE");
        Part other = part("IMPORT-TWICE-ELSEWHERE");
        byte[] bytes = SweepBench.csv(new SeriesRlc(21.5e-6, 4e-3, 1.2e-9));
        store(part, "first.csv", bytes).andExpect(header().exists("HX-Redirect"));
        Sweep first = library.sweepsOf(part.id()).get(0);
        String link = "href=\"/library/sweeps/" + first.id() + "\"";
        preview(part, "second.csv", bytes).andExpect(content().string(allOf(containsString("The same bytes were imported before"), containsString(link))));
        store(part, "second.csv", bytes).andExpect(header().doesNotExist("HX-Redirect"))
                .andExpect(content().string(allOf(containsString("stored for this part already"), containsString(link), containsString("Store them once more"))));
        assertThat(library.sweepsOf(part.id())).hasSize(1);
        store(other, "elsewhere.csv", bytes).andExpect(header().exists("HX-Redirect"));
        mvc.perform(get("/library/sweeps/{id}", library.sweepsOf(other.id()).get(0).id()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(allOf(containsString(link), containsString("of IMPORT-TWICE)"))));
        mvc.perform(request("/library/parts/{id}/sweeps", part).file(SweepBench.file("second.csv", bytes)).param("storeAgain", "on")
                .with(people.as(Role.ENGINEER)).with(csrf())).andExpect(header().exists("HX-Redirect"));
        assertThat(library.sweepsOf(part.id())).hasSize(2);
    }

    /** One file of several sweeps: the second of them is other points from the same bytes. */
    @Test
    void anotherSweepOfTheSameFileIsStored() throws Exception {
        Part part = part("IMPORT-BLOCKS");
        byte[] bytes = "Hz,R Ohm,X Ohm\n1000,1,-7\n2000,1,-3\n1000,2,-7\n2000,2,-3\n".getBytes(StandardCharsets.UTF_8);
        for (String block : List.of("1", "2")) {
            mvc.perform(request("/library/parts/{id}/sweeps", part).file(SweepBench.file("two.csv", bytes)).param("block", block)
                    .with(people.as(Role.ENGINEER)).with(csrf())).andExpect(header().exists("HX-Redirect"));
        }
        assertThat(library.sweepsOf(part.id())).extracting(sweep -> sweep.document().resistanceOhm()[0]).containsExactlyInAnyOrder(1.0, 2.0);
    }

    @Test
    void aSweepThatTheFileDoesNotHoldIsSaidAtItsField() throws Exception {
        byte[] bytes = "Hz,R Ohm,X Ohm\n1000,1,-7\n2000,1,-3\n1000,2,-7\n2000,2,-3\n".getBytes(StandardCharsets.UTF_8);
        String page = mvc.perform(request("/library/parts/{id}/sweeps/preview", part("IMPORT-NO-BLOCK")).file(SweepBench.file("two.csv", bytes)).param("block", "3")
                .with(people.as(Role.ENGINEER)).with(csrf())).andReturn().getResponse().getContentAsString();
        assertThat(page).containsPattern("name=\"block\" value=\"3\"[^>]*aria-invalid=\"true\"").contains("there is no number 3");
    }

    /** The columns stay as they were chosen, with the wrong unit marked. */
    @Test
    void aUnitThatIsNoneOfItsColumnIsMarkedAndNothingTypedIsLost() throws Exception {
        byte[] bytes = "a,b,c\n1000,1,-7\n2000,1,-3\n".getBytes(StandardCharsets.UTF_8);
        String page = mvc.perform(request("/library/parts/{id}/sweeps/preview", part("IMPORT-UNIT")).file(SweepBench.file("a.csv", bytes))
                .param("columnsOf", Sha256.of(bytes)).param("column1", "frequency").param("column2", "resistance").param("column3", "reactance")
                .param("unit1", "kHz").param("unit2", "farads").param("unit3", "mohm")
                .with(people.as(Role.ENGINEER)).with(csrf())).andReturn().getResponse().getContentAsString();
        assertThat(page).containsPattern("name=\"unit2\" value=\"farads\"[^>]*aria-invalid=\"true\"").contains("is no unit of resistance")
                .contains("value=\"kHz\"").contains("value=\"mohm\"").containsPattern("value=\"reactance\"[^>]*selected");
    }

    @Test
    void aFixtureIsKeptOnceAndItsRawFileCanBeHad() throws Exception {
        String id = stored("T5, short", "short", null, omega -> new Complex(5e-3, 0));
        byte[] bytes = library.rawOf(fixtures.find(UUID.fromString(id)).orElseThrow().rawSha256());
        mvc.perform(get("/library/fixtures/{id}/raw", id).with(people.as(Role.VIEWER))).andExpect(status().isOk()).andExpect(content().bytes(bytes));
        mvc.perform(addition("T5, once more", "short", null, bytes))
                .andExpect(content().string(containsString("The same bytes are stored as &#39;T5, short&#39; already")));
        mvc.perform(get("/library/fixtures/{id}/raw", UUID.randomUUID()).with(people.as(Role.VIEWER))).andExpect(status().isNotFound());
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
        Curve smooth = SweepBench.curve(SweepBench.PIECE, FrequencyGrid.logSpaced(50, 20e6, 100_000));
        double[] r = smooth.reals();
        r[62_347] = 7.77;
        byte[] bytes = SweepWriter.csv(new Curve(smooth.grid(), r, smooth.imaginaries()), List.of()).getBytes(StandardCharsets.UTF_8);
        store(part, "long.csv", bytes).andExpect(header().exists("HX-Redirect"));
        Sweep sweep = library.sweepsOf(part.id()).get(0);
        assertThat(sweep.points()).isEqualTo(100_000);
        String page = mvc.perform(get("/library/sweeps/{id}", sweep.id())
                .with(people.as(Role.VIEWER))).andExpect(status().isOk()).andReturn().getResponse().getContentAsString();
        assertThat(page.length()).isLessThan(4_000_000);
        // The single point that stands out is among those that are drawn, of |Z| and of the ESR, and the fit owns up to it.
        assertThat(page.split("7\\.77\\b", -1).length).as("places where the peak stands").isGreaterThanOrEqualTo(3);
        assertThat(page).contains("it does not follow the sweep there");
    }

    private static final FrequencyGrid GRID = FrequencyGrid.logSpaced(50, 20e6, 281);

    private static Complex series(double omega) {
        return new Complex(20e-3, omega * 1e-9);
    }

    private static Complex across(double omega) {
        return new Complex(0, -1 / (omega * 40e-12));
    }

    private static Complex piece(double omega) {
        return new Complex(4e-3, omega * 1.2e-9 - 1 / (omega * 21e-6));
    }

    private static byte[] inFixture(DoubleFunction<Complex> ofOmega) {
        double[] r = new double[GRID.size()];
        double[] x = new double[GRID.size()];
        for (int i = 0; i < r.length; i++) {
            Complex z = ofOmega.apply(GRID.omega(i));
            r[i] = z.re();
            x[i] = z.im();
        }
        return SweepWriter.csv(new Curve(GRID, r, x), List.of("invented")).getBytes(StandardCharsets.UTF_8);
    }

    /** Stores a fixture sweep through its page. @return its id */
    private String stored(String name, String standard, String loadOhm, DoubleFunction<Complex> ofOmega) throws Exception {
        mvc.perform(addition(name, standard, loadOhm, inFixture(ofOmega))).andExpect(redirectedUrl("/library/fixtures"));
        return fixtures.all().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow().id().toString();
    }

    private MockMultipartHttpServletRequestBuilder addition(String name, String standard, String loadOhm, byte[] bytes) {
        MockMultipartHttpServletRequestBuilder add = multipart("/library/fixtures");
        add.file(SweepBench.file("fixture.csv", bytes)).param("name", name).param("standard", standard).param("fixture", "impedance")
                .param("measuredBy", "someone").param("measuredOn", "2031-03-03").param("instrument", "invented")
                .param("loadOhm", loadOhm == null ? "" : loadOhm).with(people.as(Role.ENGINEER)).with(csrf());
        return add;
    }

    private void assertIsThePiece(Part part, String said) {
        SweepDocument stored = library.sweepsOf(part.id()).get(0).document();
        for (int i = 0; i < GRID.size(); i++) {
            Complex truth = piece(GRID.omega(i));
            assertThat(stored.resistanceOhm()[i]).as("%g Hz", GRID.hz(i)).isCloseTo(truth.re(), within(1e-9 * (1 + truth.magnitude())));
            assertThat(stored.reactanceOhm()[i]).as("%g Hz", GRID.hz(i)).isCloseTo(truth.im(), within(1e-9 * (1 + truth.magnitude())));
        }
        assertThat(stored.warnings()).anyMatch(warning -> warning.contains(said));
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
