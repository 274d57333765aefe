package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrlPattern;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.stillrail.account.Role;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;

@AppTest
class PartPagesTest {

    @Autowired
    MockMvc mvc;

    @Autowired
    TestPeople people;

    @Autowired
    Parts parts;

    @Autowired
    JdbcClient jdbc;

    @Test
    void proposesAPartFromEngineeringEntries() throws Exception {
        mvc.perform(filled(post("/library/parts/new"), "PAGE-22U").with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(redirectedUrlPattern("/library/parts/*"));

        PartDocument part = parts.find("PAGE-22U").orElseThrow().document();
        assertThat(part.capacitanceF()).isEqualTo(22e-6);
        assertThat(part.losses()).containsExactly(new LossFigure(LossFigure.Kind.ESR, 0.018, 100e3, LossFigure.Bound.MAXIMUM));
        assertThat(part.heightM()).isEqualTo(5.4e-3);
        assertThat(part.characteristics().capacitanceOverBias().at(2.5)).isEqualTo(0.86);
    }

    @Test
    void everyWrongFieldIsSaidAtOnceAndWhatWasTypedIsKept() throws Exception {
        mvc.perform(post("/library/parts/new").with(people.as(Role.ENGINEER)).with(csrf())
                        .param("partNumber", "PAGE-WRONG").param("technology", "film").param("capacitance", "plenty")
                        .param("ratedVoltage", "-3").param("toleranceMinus", "20").param("tolerancePlus", "20")
                        .param("loss0Value", "5m").param("loss0Kind", "ESR").param("loss0Bound", "TYPICAL"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("4 fields need attention")))
                .andExpect(content().string(containsString("Maker is missing")))
                .andExpect(content().string(containsString("&#39;plenty&#39; is not a number")))
                .andExpect(content().string(containsString("Rated voltage must be above 0")))
                .andExpect(content().string(containsString("Loss figure 1, frequency is missing")))
                .andExpect(content().string(containsString("value=\"PAGE-WRONG\"")))
                .andExpect(content().string(containsString("value=\"plenty\"")));
        assertThat(parts.find("PAGE-WRONG")).isEmpty();
    }

    @Test
    void takenPartNumberIsRefusedInWords() throws Exception {
        mvc.perform(filled(post("/library/parts/new"), "PAGE-TWICE").with(people.as(Role.ENGINEER)).with(csrf()));
        mvc.perform(filled(post("/library/parts/new"), "PAGE-TWICE").with(people.as(Role.ENGINEER)).with(csrf()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("The library already holds PAGE-TWICE")));
    }

    @Test
    void secondOfTwoEditorsSeesTheFirstsChangeAndLosesNothing() throws Exception {
        UUID id = proposed("PAGE-RACE");
        String start = Long.toString(parts.find(id).orElseThrow().version());
        mvc.perform(filled(post("/library/parts/" + id + "/edit"), "PAGE-RACE").param("version", start).param("note", "the first's")
                .with(people.as(Role.ENGINEER)).with(csrf())).andExpect(redirectedUrlPattern("/library/parts/*"));

        mvc.perform(filled(post("/library/parts/" + id + "/edit"), "PAGE-RACE").param("version", start).param("note", "the second's")
                        .with(people.as(Role.LIBRARIAN)).with(csrf()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("was changed by somebody else")))
                .andExpect(content().string(containsString("the second&#39;s")));
        assertThat(parts.find(id).orElseThrow().document().note()).isEqualTo("the first's");
        assertThat(parts.find(id, 1).orElseThrow().document().note()).isNull();
    }

    @Test
    void engineerMayNotVetAndTheAttemptIsOnRecord() throws Exception {
        UUID id = proposed("PAGE-VET");
        mvc.perform(post("/library/parts/" + id + "/vetting").param("vetting", "vetted").param("version", "0")
                .with(people.as(Role.ENGINEER)).with(csrf())).andExpect(status().isForbidden());
        assertThat(parts.find(id).orElseThrow().vetting()).isEqualTo(Vetting.PROPOSED);
        assertThat(jdbc.sql("select count(*) from audit_event where subject_id like :path or detail like :path").param("path", "%/library/parts/" + id + "/vetting%")
                .query(Integer.class).single()).isEqualTo(1);
    }

    @Test
    void restrictingNeedsItsCondition() throws Exception {
        UUID id = proposed("PAGE-RESTRICT");
        mvc.perform(post("/library/parts/" + id + "/vetting").param("vetting", "restricted").param("version", "0")
                        .with(people.as(Role.LIBRARIAN)).with(csrf()))
                .andExpect(content().string(containsString("The condition is missing")));
        mvc.perform(post("/library/parts/" + id + "/vetting").param("vetting", "restricted").param("version", "0")
                .param("reason", "Not under 0 degC").with(people.as(Role.LIBRARIAN)).with(csrf()));
        Part part = parts.find(id).orElseThrow();
        assertThat(part.vetting()).isEqualTo(Vetting.RESTRICTED);
        assertThat(part.vettingReason()).isEqualTo("Not under 0 degC");
    }

    @Test
    void unknownPartIsAClearPage() throws Exception {
        mvc.perform(get("/library/parts/" + UUID.randomUUID()).with(people.as(Role.VIEWER))).andExpect(status().isNotFound());
    }

    @Test
    void listIsNarrowedByTechnologyCapacitanceAndVoltage() throws Exception {
        proposed("PAGE-LIST");
        mvc.perform(get("/library").param("text", "PAGE-LIST").param("technology", "polymer-aluminium").param("capacitanceFrom", "10u")
                        .param("capacitanceTo", "22u").param("ratedVoltageFrom", "25").with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("PAGE-LIST")));
        mvc.perform(get("/library").param("text", "PAGE-LIST").param("capacitanceFrom", "23u").with(people.as(Role.VIEWER)))
                .andExpect(content().string(not(containsString("/library/parts/" + parts.find("PAGE-LIST").orElseThrow().id()))));
    }

    private UUID proposed(String partNumber) throws Exception {
        mvc.perform(filled(post("/library/parts/new"), partNumber).with(people.as(Role.ENGINEER)).with(csrf()));
        return parts.find(partNumber).orElseThrow().id();
    }

    private static MockHttpServletRequestBuilder filled(MockHttpServletRequestBuilder request, String partNumber) {
        return request.param("partNumber", partNumber).param("maker", "Invented Parts").param("technology", "polymer-aluminium")
                .param("capacitance", "22u").param("toleranceMinus", "20 %").param("tolerancePlus", "20").param("ratedVoltage", "25")
                .param("loss0Kind", "ESR").param("loss0Value", "18m").param("loss0Frequency", "100k").param("loss0Bound", "MAXIMUM")
                .param("height", "5.4 mm").param("overBias", "0 V: 100 %; 5 V: 72 %");
    }
}
