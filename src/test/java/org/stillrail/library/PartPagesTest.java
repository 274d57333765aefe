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
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.stillrail.account.Role;
import org.stillrail.support.AppTest;
import org.stillrail.support.TeamBench;
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

    @Autowired
    ApplicationContext context;

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
        String edit = "/library/parts/" + id + "/edit";
        String start = Long.toString(parts.find(id).orElseThrow().version());
        mvc.perform(filled(post(edit), "PAGE-RACE").param("version", start).param("from", "1").param("note", "the first's").param("cost", "0.31")
                .with(people.as(Role.ENGINEER)).with(csrf())).andExpect(redirectedUrlPattern("/library/parts/*"));

        String page = mvc.perform(filled(post(edit), "PAGE-RACE").param("version", start).param("from", "1").param("note", "the second's")
                        .param("caseSize", "1210").with(people.as(Role.LIBRARIAN)).with(csrf()))
                .andExpect(status().isOk()).andReturn().getResponse().getContentAsString().replaceAll("\\s+", " ");
        assertThat(page).contains(people.with(Role.ENGINEER).displayName() + " saved revision 2 at ", " UTC while this page was open.")
                .contains("<th scope=\"row\">Note</th> <td class=\"figure wrap\">not stated</td><td class=\"figure wrap\">the first&#39;s</td>"
                        + " <td class=\"figure wrap\">the second&#39;s</td><td>yours</td>", "Revision 2 has: the first&#39;s")
                .contains("<th scope=\"row\">Cost</th> <td class=\"figure wrap\">not stated</td><td class=\"figure wrap\">0.31</td>"
                        + " <td class=\"figure wrap\">as you began</td><td>theirs</td>", "Revision 2 has changed this; it was: not stated")
                .doesNotContain("<th scope=\"row\">Case size</th>");
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
        UUID id = proposed("PAGE-RESTRICT", "datasheetDocument", "Sheet", "rippleCurrent", "2", "rippleFrequency", "100k", "rippleTemperature", "105");
        mvc.perform(post("/library/parts/" + id + "/exemptions").param("item", "SWEEP").param("exemption", "the bench is away")
                .with(people.as(Role.LIBRARIAN)).with(csrf()));
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

    /** Each characteristic can be typed, is stored as a curve, stands on the page with its chart, and comes back into the form. */
    @Test
    void everyCharacteristicGoesFromTheFormToThePage() throws Exception {
        mvc.perform(filled(post("/library/parts/new"), "PAGE-CHANGES").param("overTemperature", "-40 degC: 92 %; 25: 100 %; 105: 104 %")
                .param("ageing", "1.5 %").param("refereeHours", "24").param("esrOverTemperature", "-40: 1200 %; 20: 100 %; 105: 60 %")
                .param("esrOverTemperatureFrequency", "120").param("endOfLifeCapacitance", "80").param("endOfLifeResistance", "200 %")
                .param("rippleOverFrequency", "120 Hz: 50 %; 100 kHz: 100 %").param("rippleOverTemperature", "65: 180 %; 105: 100 %")
                .with(people.as(Role.ENGINEER)).with(csrf())).andExpect(redirectedUrlPattern("/library/parts/*"));
        UUID id = parts.find("PAGE-CHANGES").orElseThrow().id();
        String page = mvc.perform(get("/library/parts/" + id).with(people.as(Role.VIEWER))).andExpect(status().isOk())
                .andReturn().getResponse().getContentAsString().replace('\u00a0', ' ');
        assertThat(page).contains("\u221220 % to +20 % of nominal, at delivery", "100 % at 0 V to 72 % at 5 V, 2 points", "92 % at -40 \u00b0C to 104 % at 105 \u00b0C",
                "1.5 % of the capacitance lost in each decade of hours, from 24 h", "1200 % at -40 \u00b0C to 60 % at 105 \u00b0C",
                "80 % of the capacitance and 200 % of the ESR", "50 % at 120 Hz to 100 % at 100 kHz", "180 % at 65 \u00b0C to 100 % at 105 \u00b0C");
        for (String chart : new String[] {"bias", "temperature", "age", "esr", "ripple-frequency", "ripple-temperature"}) {
            assertThat(page).contains("id=\"change-" + chart + "-data\"");
        }
        String form = mvc.perform(get("/library/parts/" + id + "/edit").with(people.as(Role.LIBRARIAN))).andReturn().getResponse().getContentAsString();
        assertThat(form).contains("-40 degC: 92 %; 25 degC: 100 %; 105 degC: 104 %", "120 Hz: 50 %; 100 kHz: 100 %", "value=\"24 h\"", "value=\"200 %\"");
    }

    /** X7R: 15 % either way from -55 to 125 degC, and 1 to 4 % a decade of hours; a drawn curve stands in for it. */
    @Test
    void aClassCodeGivesBoundsWhereNoCurveIsDrawn() throws Exception {
        UUID coded = proposed("PAGE-X7R", "dielectricCode", "x7r");
        mvc.perform(get("/library/parts/" + coded).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("\u221215 % to +15 % from -55\u00a0\u00b0C to 125\u00a0\u00b0C, as X7R promises")))
                .andExpect(content().string(containsString("usual for x7r, 1\u00a0% to 4\u00a0%")))
                .andExpect(content().string(containsString("default by class code")));
        UUID drawn = proposed("PAGE-X7R-DRAWN", "dielectricCode", "X7R", "overTemperature", "-40: 90 %; 25: 100 %");
        mvc.perform(get("/library/parts/" + drawn).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("stands in for the code X7R")))
                .andExpect(content().string(not(containsString("as X7R promises"))));
        UUID odd = proposed("PAGE-ODD-CODE", "dielectricCode", "Q9Q");
        mvc.perform(get("/library/parts/" + odd).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("the code Q9Q is not known here: taken as flat")));
    }

    @Test
    void whatTheDatasheetLeavesBlankIsMarkedAsAnEstimate() throws Exception {
        mvc.perform(post("/library/parts/new").param("partNumber", "PAGE-BLANK").param("maker", "Invented Parts").param("technology", "wet-aluminium")
                .param("capacitance", "100u").param("toleranceMinus", "20").param("tolerancePlus", "20").param("ratedVoltage", "25")
                .with(people.as(Role.ENGINEER)).with(csrf()));
        UUID id = parts.find("PAGE-BLANK").orElseThrow().id();
        mvc.perform(get("/library/parts/" + id).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("ESL is not given: taken as 12\u00a0nH, usual for wet aluminium.")))
                .andExpect(content().string(containsString("loss tangent taken as 0.2 at 120\u00a0Hz")))
                .andExpect(content().string(containsString("though wet aluminium has many times its ESR in the cold")));
    }

    /** 72 % left at 5 V, straight from 100 % at 0 V; 80 % of that at the end of life. */
    @Test
    void aPartIsDrawnAtSeveralOperatingPoints() throws Exception {
        UUID id = proposed("PAGE-POINTS", "endOfLifeCapacitance", "80", "endOfLifeResistance", "200");
        mvc.perform(get("/library/parts/" + id).param("atBias", "5").param("atTemperature", "25").param("at2Bias", "2.5 V").param("at2Temperature", "25")
                        .param("at2Life", "end").with(people.as(Role.VIEWER))).andExpect(status().isOk())
                .andExpect(content().string(containsString("15.84\u00a0\u00b5F")))
                .andExpect(content().string(containsString("15.14\u00a0\u00b5F")))
                .andExpect(content().string(containsString("at 2.5\u00a0V, 25\u00a0\u00b0C, end of life")))
                .andExpect(content().string(containsString("atBias=5.0&amp;atTemperature=25.0")));
        mvc.perform(get("/library/parts/" + id).param("at3Bias", "much").with(people.as(Role.VIEWER))).andExpect(status().isOk())
                .andExpect(content().string(containsString("&#39;much&#39; is not a number")))
                .andExpect(content().string(containsString("Temperature is missing")));
    }

    @Test
    void itsPageSaysWhatIsLeftAtTheVoltagesOfItsRails() throws Exception {
        TeamBench bench = new TeamBench(context, people.with(Role.ENGINEER));
        bench.addBank(2);
        mvc.perform(get("/library/parts/" + bench.part().id()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("Capacitance left at the voltages of these rails")))
                .andExpect(content().string(containsString("<td class=\"figure\">3.3\u00a0V</td>")))
                .andExpect(content().string(containsString("Nothing is known of how it changes over bias")));
    }

    private UUID proposed(String partNumber, String... fields) throws Exception {
        MockHttpServletRequestBuilder request = filled(post("/library/parts/new"), partNumber);
        for (int i = 0; i < fields.length; i += 2) {
            request.param(fields[i], fields[i + 1]);
        }
        mvc.perform(request.with(people.as(Role.ENGINEER)).with(csrf()));
        return parts.find(partNumber).orElseThrow().id();
    }

    private static MockHttpServletRequestBuilder filled(MockHttpServletRequestBuilder request, String partNumber) {
        return request.param("partNumber", partNumber).param("maker", "Invented Parts").param("technology", "polymer-aluminium")
                .param("capacitance", "22u").param("toleranceMinus", "20 %").param("tolerancePlus", "20").param("ratedVoltage", "25")
                .param("loss0Kind", "ESR").param("loss0Value", "18m").param("loss0Frequency", "100k").param("loss0Bound", "MAXIMUM")
                .param("height", "5.4 mm").param("overBias", "0 V: 100 %; 5 V: 72 %");
    }
}
