package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ReadOptions;
import org.stillrail.sweepfile.ReadSweep;
import org.stillrail.sweepfile.SweepReader;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;

@AppTest
class SweepPagesTest {

    @Autowired
    MockMvc mvc;

    @Autowired
    TestPeople people;

    @Autowired
    Library library;

    @Autowired
    Parts parts;

    @Autowired
    Clock clock;

    @Test
    void theSweepPageDrawsFitFiguresAndTrust() throws Exception {
        Sweep sweep = imported("SWEEP-PAGE", SweepBench.PIECE, "A");
        mvc.perform(get("/library/sweeps/{id}", sweep.id()).with(people.as(Role.VIEWER)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Nothing was found wrong")))
                .andExpect(content().string(containsString("Passive: its resistance is nowhere negative")))
                .andExpect(content().string(containsString("fit-esr-data")))
                .andExpect(content().string(containsString("ESR at 100 kHz")))
                .andExpect(content().string(containsString("&quot;low&quot;")))
                .andExpect(content().string(containsString("The ESR is not known from 50")));
    }

    @Test
    void aFindingIsAcceptedByALibrarianWithAReason() throws Exception {
        Sweep sweep = imported("SWEEP-FOUND", new SeriesRlc(12e-6, 4e-3, 1.2e-9), "A");
        mvc.perform(get("/library/sweeps/{id}", sweep.id()).with(people.as(Role.ENGINEER)))
                .andExpect(content().string(containsString("off the datasheet")))
                .andExpect(content().string(not(containsString("Accept it, because"))));
        mvc.perform(post("/library/sweeps/{id}/findings/accept", sweep.id()).with(people.as(Role.LIBRARIAN)).with(csrf())
                        .param("kind", "DATASHEET"))
                .andExpect(status().isOk()).andExpect(content().string(containsString("The reason is missing")));
        mvc.perform(post("/library/sweeps/{id}/findings/accept", sweep.id()).with(people.as(Role.LIBRARIAN)).with(csrf())
                        .param("kind", "NOISE").param("reason", "none there"))
                .andExpect(status().isOk()).andExpect(content().string(containsString("no such finding")));
        mvc.perform(post("/library/sweeps/{id}/findings/accept", sweep.id()).with(people.as(Role.LIBRARIAN)).with(csrf())
                        .param("kind", "DATASHEET").param("reason", "measured after the life test"))
                .andExpect(redirectedUrl("/library/sweeps/" + sweep.id()));
        assertThat(library.acceptancesOf(sweep.id())).hasSize(1);
        mvc.perform(get("/library/sweeps/{id}", sweep.id()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("measured after the life test")));
        mvc.perform(get("/audit").with(people.as(Role.VIEWER))).andExpect(content().string(containsString("finding accepted")));
    }

    @Test
    void everyExportReadsBackAsTheSameSweep() throws Exception {
        Sweep sweep = imported("SWEEP-OUT", SweepBench.PIECE, "A");
        for (String format : List.of("touchstone-z", "touchstone-s", "csv")) {
            byte[] bytes = mvc.perform(get("/library/sweeps/{id}/export/{format}", sweep.id(), format).with(people.as(Role.VIEWER)))
                    .andExpect(status().isOk())
                    .andReturn().getResponse().getContentAsByteArray();
            String name = format.equals("csv") ? "x.csv" : "x.s1p";
            assertThat(new String(bytes, StandardCharsets.UTF_8)).contains("Part SWEEP-OUT, sample A", "with invented analyser",
                    "compensation unknown", "SHA-256 of the file: " + sweep.rawSha256());
            ReadSweep read = SweepReader.read(bytes, name,
                    ReadOptions.of(format.equals("touchstone-s") ? Fixture.REFLECTION : Fixture.IMPEDANCE));
            assertThat(read.frequencyHz()).containsExactly(sweep.document().frequencyHz());
            for (int i = 0; i < read.points(); i++) {
                double z = sweep.document().impedance().magnitude(i);
                assertThat(read.impedance().magnitude(i)).isCloseTo(z, within(1e-7 * z));
            }
        }
        mvc.perform(get("/library/sweeps/{id}/export/json", sweep.id()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("\"frequencyHz\":[50")));
        mvc.perform(get("/library/sweeps/{id}/export/xml", sweep.id()).with(people.as(Role.VIEWER))).andExpect(status().isNotFound());
    }

    /** The datasheet's only loss figure makes the model a series R-L-C, which every format gives back. */
    @Test
    void everyExportOfAPartReadsBackAsItsModel() throws Exception {
        Part part = part("SWEEP-PART-ALL");
        SeriesRlc model = new SeriesRlc(22e-6, 5e-3, 1.2e-9);
        for (String format : List.of("touchstone-z", "touchstone-s", "csv")) {
            byte[] bytes = mvc.perform(get("/library/parts/{id}/export/{format}", part.id(), format).with(people.as(Role.VIEWER)))
                    .andExpect(status().isOk()).andReturn().getResponse().getContentAsByteArray();
            ReadSweep read = SweepReader.read(bytes, format.equals("csv") ? "x.csv" : "x.s1p",
                    ReadOptions.of(format.equals("touchstone-s") ? Fixture.REFLECTION : Fixture.IMPEDANCE));
            for (int i = 0; i < read.points(); i++) {
                double z = Math.sqrt(model.at(read.frequencyHz()[i]).squaredMagnitude());
                assertThat(read.impedance().magnitude(i)).isCloseTo(z, within(1e-6 * z));
            }
            assertThat(new String(bytes, StandardCharsets.UTF_8)).contains("Part SWEEP-PART-ALL, revision 1, proposed",
                    "SHA-256 of the revision: " + part.revision().sha256(), "Model: datasheet figures without a reference");
        }
        mvc.perform(get("/library/parts/{id}/export/json", part.id()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("\"resistanceOhm\":[0.005")))
                .andExpect(content().string(containsString("SHA-256 of the revision")));
        mvc.perform(get("/library/parts/{id}/export/xml", part.id()).with(people.as(Role.VIEWER))).andExpect(status().isNotFound());
    }

    @Test
    void aPartIsExportedAtAnOperatingPoint() throws Exception {
        Part part = part("SWEEP-PART-OUT");
        mvc.perform(get("/library/parts/{id}/export/csv", part.id()).param("atBias", "5").param("atTemperature", "25").with(people.as(Role.VIEWER)))
                .andExpect(status().isOk())
                .andExpect(header().string("Content-Disposition", containsString(".csv")))
                .andExpect(content().string(containsString("freq/Hz")));
        mvc.perform(get("/library/parts/{id}/export/csv", part.id()).param("atBias", "much").with(people.as(Role.VIEWER)))
                .andExpect(status().isBadRequest());
    }

    private Part part(String number) {
        return parts.insert(SweepBench.part(number), Vetting.PROPOSED, null, people.with(Role.ENGINEER), OffsetDateTime.now(clock));
    }

    private Sweep imported(String number, SeriesRlc piece, String sample) throws Exception {
        Part part = part(number);
        CurrentPerson engineer = people.with(Role.ENGINEER);
        mvc.perform(SweepBench.provenance("/library/parts/{id}/sweeps", part.id(), sample, engineer)
                        .file(SweepBench.file("piece.csv", SweepBench.csv(piece))).with(people.as(engineer)).with(csrf()))
                .andExpect(header().exists("HX-Redirect"));
        return library.sweepsOf(part.id()).get(0);
    }
}
