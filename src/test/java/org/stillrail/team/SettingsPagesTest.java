package org.stillrail.team;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.stillrail.account.Role;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.requirement.DeratingRule;
import org.stillrail.electrical.requirement.TeamSettings;
import org.stillrail.electrical.stress.StressRule;
import org.stillrail.support.AppTest;
import org.stillrail.support.TestPeople;
import org.stillrail.web.Form;

@AppTest
class SettingsPagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private Settings settings;

    /** @param fieldAndValue one field that is typed otherwise than the document has it, or nothing */
    private static MockHttpServletRequestBuilder filled(int from, SettingsDocument document, String... fieldAndValue) {
        MockHttpServletRequestBuilder call = post("/settings").param("from", Integer.toString(from)).with(csrf());
        Form form = SettingsForm.fill(document);
        if (fieldAndValue.length > 0) {
            form.with(fieldAndValue[0], fieldAndValue[1]);
        }
        call.param("largestSensitivityPeak", form.get("largestSensitivityPeak")).param("pointsPerDecade", form.get("pointsPerDecade"));
        document.vettingItems().forEach(item -> call.param("vetting." + item.name(), "on"));
        for (Technology technology : Technology.values()) {
            for (String field : List.of("share", "upTo", "secondShare", "second", "below", "least", "source", "stress.ripple", "stress.temperature",
                    "stress.margin", "stress.most", "stress.life", "stress.source")) {
                String name = technology.key() + "." + field;
                if (form.get(name) != null) {
                    call.param(name, form.get(name));
                }
            }
        }
        return call;
    }

    @Test
    void everyRuleShowsItsSource() throws Exception {
        mvc.perform(get("/settings").with(people.as(Role.VIEWER))).andExpect(status().isOk()).andExpect(content().string(allOf(
                containsString("MIL-STD-975M"), containsString("common practice, no source"), containsString("Administrators change these"))));
    }

    @Test
    void whatIsFilledInIsReadBackAsItWas() {
        Form form = SettingsForm.fill(SettingsDocument.DEFAULT);
        SettingsDocument read = SettingsForm.read(form);
        assertThat(form.errors().all()).isEmpty();
        assertThat(read.vettingItems()).isEqualTo(SettingsDocument.DEFAULT.vettingItems());
        for (Technology technology : Technology.values()) {
            assertThat(read.evaluation().deratingRules().of(technology))
                    .isEqualTo(TeamSettings.DEFAULT.deratingRules().of(technology));
            assertThat(read.evaluation().stressRules().of(technology)).isEqualTo(TeamSettings.DEFAULT.stressRules().of(technology));
        }
    }

    @Test
    void aStressRuleIsReadBackAsItWasTyped() {
        StressRule rule = new StressRule(Technology.HYBRID, 0.8, 0.95, 10, 110.0, 1.5, "our own tests");
        SettingsDocument changed = new SettingsDocument(
                TeamSettings.DEFAULT.withStressRules(TeamSettings.DEFAULT.stressRules().with(rule)), List.of(), 20);
        assertThat(SettingsForm.read(SettingsForm.fill(changed)).evaluation().stressRules().of(Technology.HYBRID)).isEqualTo(rule);
    }

    @Test
    void aStressRuleNeedsItsSourceAndAShareUnderOne() throws Exception {
        mvc.perform(filled(0, SettingsDocument.DEFAULT, "hybrid.stress.margin", "10").with(people.as(Role.ADMINISTRATOR)))
                .andExpect(status().isOk()).andExpect(content().string(containsString("Say where these figures come from")));
        mvc.perform(filled(0, SettingsDocument.DEFAULT, "ceramic-2.stress.ripple", "120").with(people.as(Role.ADMINISTRATOR)))
                .andExpect(status().isOk()).andExpect(content().string(containsString("must be at most 100 %")));
    }

    @Test
    void aCurrencyIsACodeOfThreeLettersAndAbsentBefore() {
        SettingsDocument euro = SettingsDocument.DEFAULT.withCurrency("EUR");
        assertThat(SettingsForm.read(SettingsForm.fill(euro)).evaluation().currency()).isEqualTo("EUR");
        assertThat(SettingsForm.read(SettingsForm.fill(euro).with("currency", "chf")).evaluation().currencyUnit()).isEqualTo("CHF");
        Form wrong = SettingsForm.fill(euro).with("currency", "Euro");
        assertThat(SettingsForm.read(wrong)).isNull();
        assertThat(wrong.errors().all()).containsOnlyKeys("currency");
        assertThat(CanonicalJson.write(SettingsDocument.DEFAULT)).doesNotContain("currency");
    }

    /** As a revision was stored before there were stress rules. */
    @Test
    void olderSettingsTakeTheDefaultStressRules() {
        String older = CanonicalJson.write(SettingsDocument.DEFAULT).replaceFirst("\\{\"rules\":\\[[^]]*85 degC[^]]*\\]\\}", "null");
        assertThat(older).contains("\"stressRules\":null");
        assertThat(CanonicalJson.read(older, SettingsDocument.class)).isEqualTo(SettingsDocument.DEFAULT);
    }

    @Test
    void anAdministratorMakesARevisionAndASecondOneWhoStartedBeforeLosesNothing() throws Exception {
        int from = settings.latest().map(revision -> revision.number()).orElse(0);
        DeratingRule film = DeratingRule.constant(Technology.FILM, 0.7, "our own tests");
        SettingsDocument changed = new SettingsDocument(
                TeamSettings.DEFAULT.withDeratingRules(TeamSettings.DEFAULT.deratingRules().with(film)), List.of(VettingItem.COST), 35);
        mvc.perform(filled(from, changed).with(people.as(Role.ADMINISTRATOR))).andExpect(redirectedUrl("/settings"));
        assertThat(settings.current().evaluation().deratingRules().of(Technology.FILM)).contains(film);
        assertThat(settings.current().vettingItems()).containsExactly(VettingItem.COST);
        assertThat(settings.current().pointsPerDecade()).isEqualTo(35);
        String page = mvc.perform(filled(from, SettingsDocument.DEFAULT, "film.share", "55").with(people.as(Role.ADMINISTRATOR)))
                .andExpect(status().isOk()).andReturn().getResponse().getContentAsString().replaceAll("\\s+", " ");
        assertThat(page).contains("saved revision " + (from + 1) + " at ", "name=\"film.share\" value=\"55\"", "name=\"pointsPerDecade\" value=\"35\"",
                "name=\"vetting.COST\" checked", "<th scope=\"row\">A part needs " + VettingItem.COST.label() + "</th> <td class=\"figure wrap\">no</td>"
                        + "<td class=\"figure wrap\">yes</td> <td class=\"figure wrap\">as you began</td><td>theirs</td>")
                .doesNotContain("name=\"vetting.SWEEP\" checked");
        assertThat(settings.current().vettingItems()).containsExactly(VettingItem.COST);

        // Every evaluation of the shared application uses the settings, so they go back to what they were.
        mvc.perform(filled(from + 1, SettingsDocument.DEFAULT).with(people.as(Role.ADMINISTRATOR))).andExpect(redirectedUrl("/settings"));
        assertThat(settings.current().evaluation().deratingRules().of(Technology.FILM))
                .isEqualTo(TeamSettings.DEFAULT.deratingRules().of(Technology.FILM));
    }

    @Test
    void settingsFromBeforePointsADecadeCouldBeChosenReadAsTheUsualOnes() {
        String now = CanonicalJson.write(SettingsDocument.DEFAULT);
        String old = now.replaceFirst(",?\"pointsPerDecade\":20", "");
        assertThat(old).isNotEqualTo(now);
        SettingsDocument read = CanonicalJson.read(old.replace("{,", "{"), SettingsDocument.class);
        assertThat(read.pointsPerDecade()).isEqualTo(SettingsDocument.USUAL_POINTS_PER_DECADE);
        assertThat(read.vettingItems()).isEqualTo(SettingsDocument.DEFAULT.vettingItems());
    }

    @Test
    void pointsADecadeAreAWholeNumber() throws Exception {
        mvc.perform(filled(0, SettingsDocument.DEFAULT, "pointsPerDecade", "many").with(people.as(Role.ADMINISTRATOR)))
                .andExpect(content().string(containsString("Points a decade must be a whole number")));
    }

    @Test
    void aRuleThatDoesNotHoldTogetherIsRefusedInWords() throws Exception {
        mvc.perform(filled(0, SettingsDocument.DEFAULT, "film.secondShare", "20").with(people.as(Role.ADMINISTRATOR)))
                .andExpect(status().isOk()).andExpect(content().string(containsString("does not hold together")));
        mvc.perform(filled(0, SettingsDocument.DEFAULT, "hybrid.below", "-1").with(people.as(Role.ADMINISTRATOR)))
                .andExpect(status().isOk()).andExpect(content().string(containsString("rails below must be above 0")));
    }
}
