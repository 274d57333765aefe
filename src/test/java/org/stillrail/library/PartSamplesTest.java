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

import java.time.OffsetDateTime;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;

@AppTest
class PartSamplesTest {

    @Autowired
    MockMvc mvc;

    @Autowired
    TestPeople people;

    @Autowired
    Library library;

    @Autowired
    Parts parts;

    @Autowired
    PartModels models;

    @Autowired
    Clock clock;

    @Test
    void thePageSaysHowManySamplesBackAFigureAndWhichIsOff() throws Exception {
        Part part = part("SAMPLES-PAGE");
        double[] ohm = {4.0e-3, 4.1e-3, 3.9e-3, 4.05e-3, 9e-3};
        for (int i = 0; i < ohm.length; i++) {
            imports(part, "S" + i, new SeriesRlc(21e-6, ohm[i], 1.2e-9), "0", "25");
        }
        mvc.perform(get("/library/parts/{id}", part.id()).with(people.as(Role.VIEWER))).andExpect(status().isOk())
                .andExpect(content().string(containsString("Far off the others: sample S4.")))
                // The middle one of 3.9, 4.0, 4.05, 4.1 and 9 mohm.
                .andExpect(content().string(containsString("4.05\u00a0m\u03a9")));
    }

    @Test
    void anAverageIsTheMeanOfTheSamplesTickedAndStaysWhenMoreAreImported() throws Exception {
        Part part = part("SAMPLES-AVERAGE");
        imports(part, "A", new SeriesRlc(21e-6, 4e-3, 1.2e-9), "0", "25");
        imports(part, "B", new SeriesRlc(21e-6, 6e-3, 1.2e-9), "0", "25");
        List<Sweep> sweeps = library.sweepsOf(part.id());
        choose(part, "average").andExpect(content().string(containsString("Tick the sweeps that are averaged")));
        choose(part, "average", sweeps.get(0).id().toString(), sweeps.get(1).id().toString())
                .andExpect(redirectedUrl("/library/parts/" + part.id()));
        imports(part, "C", new SeriesRlc(21e-6, 60e-3, 1.2e-9), "0", "25");
        PartModel model = models.of(library.require(part.id()));
        assertThat(model.model().at(100e3).resistanceOhm()).isCloseTo(5e-3, within(1e-9));
        assertThat(model.samples()).isEqualTo(2);
        assertThat(model.source()).isEqualTo("average of 2 samples: A, B");
        assertThat(model.frozen(library.require(part.id()).document()).asModelled().at(100e3).resistanceOhm()).isCloseTo(5e-3, within(1e-9));
    }

    @Test
    void sweepsAtDifferentBiasesAreNotAveragedButMakeAFamily() throws Exception {
        Part part = part("SAMPLES-FAMILY");
        imports(part, "A", new SeriesRlc(21e-6, 4e-3, 1.2e-9), "0", "25");
        imports(part, "A", new SeriesRlc(15e-6, 4e-3, 1.2e-9), "10", "25");
        List<Sweep> sweeps = library.sweepsOf(part.id());
        choose(part, "average", sweeps.get(0).id().toString(), sweeps.get(1).id().toString())
                .andExpect(status().isOk()).andExpect(content().string(containsString("can be averaged")));
        Sweep unbiased = sweeps.stream().filter(sweep -> sweep.provenance().biasV() == 0).findFirst().orElseThrow();
        choose(part, unbiased.id().toString()).andExpect(redirectedUrl("/library/parts/" + part.id()));
        mvc.perform(get("/library/parts/{id}", part.id()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("5\u00a0V, 25\u00a0\u00b0C, interpolated")));
    }

    /** A revision says for ever what it said: another sweep of its sample changes no bank that rests on it. */
    @Test
    void aSweepThatComesLaterStandsOutsideUntilTheModelIsChosenAgain() throws Exception {
        Part part = part("SAMPLES-LATER");
        imports(part, "A", new SeriesRlc(21e-6, 4e-3, 1.2e-9), "0", "25");
        String model = library.sweepsOf(part.id()).get(0).id().toString();
        choose(part, model).andExpect(redirectedUrl("/library/parts/" + part.id()));
        imports(part, "A", new SeriesRlc(15e-6, 4e-3, 1.2e-9), "10", "25");
        assertThat(models.of(library.require(part.id())).family().members()).hasSize(1);
        mvc.perform(get("/library/parts/{id}", part.id()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("1 sweep of this sample came later")));
        choose(part, model).andExpect(redirectedUrl("/library/parts/" + part.id()));
        assertThat(models.of(library.require(part.id())).family().members()).hasSize(2);
        mvc.perform(get("/library/parts/{id}", part.id()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(not(containsString("came later"))));
    }

    @Test
    void aFitIsLentInPlaceOfThePoints() throws Exception {
        Part part = part("SAMPLES-FIT");
        imports(part, "A", SweepBench.PIECE, "0", "25");
        choose(part, "fit:" + library.sweepsOf(part.id()).get(0).id()).andExpect(redirectedUrl("/library/parts/" + part.id()));
        PartModel model = models.of(library.require(part.id()));
        assertThat(model.source()).startsWith("fit of order");
        assertThat(model.model().at(123_456).resistanceOhm()).isCloseTo(4e-3, within(4e-5));
        assertThat(model.model().at(123_456).reactanceOhm()).isCloseTo(SweepBench.PIECE.at(123_456).reactanceOhm(), within(1e-4));
        mvc.perform(get("/library/parts/{id}/revisions/2/differences", part.id()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("fit of sweep")));
    }

    private ResultActions choose(Part part, String model, String... averaged) throws Exception {
        return mvc.perform(post("/library/parts/{id}/model", part.id()).param("model", model).param("modelReason", "tested")
                .param("version", Long.toString(library.require(part.id()).version())).param("averaged", averaged)
                .with(people.as(Role.LIBRARIAN)).with(csrf()));
    }

    private void imports(Part part, String sample, SeriesRlc piece, String bias, String temperature) throws Exception {
        CurrentPerson engineer = people.with(Role.ENGINEER);
        mvc.perform(SweepBench.provenance("/library/parts/{id}/sweeps", part.id(), sample, engineer)
                        .file(SweepBench.file(sample + bias + ".csv", SweepBench.csv(piece)))
                        .with(people.as(engineer)).with(csrf()).with(request -> {
                            request.setParameter("bias", bias);
                            request.setParameter("temperature", temperature);
                            return request;
                        }))
                .andExpect(header().exists("HX-Redirect"));
    }

    private Part part(String number) {
        return parts.insert(SweepBench.part(number), Vetting.PROPOSED, null, people.with(Role.ENGINEER), OffsetDateTime.now(clock));
    }
}
