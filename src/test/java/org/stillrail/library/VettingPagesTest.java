package org.stillrail.library;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.bank.Bank;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.support.AppTest;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;
import org.stillrail.team.SettingsDocument;
import org.stillrail.team.VettingItem;
import org.stillrail.web.Form;

@AppTest
class VettingPagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Library library;

    @Autowired
    private JdbcClient jdbc;

    private TeamBench bench() {
        return new TeamBench(context, people.with(Role.ENGINEER));
    }

    private ResultActions asLibrarian(MockHttpServletRequestBuilder call) throws Exception {
        return mvc.perform(call.with(people.as(Role.LIBRARIAN)).with(csrf()));
    }

    private ResultActions vet(Part part, String state, String reason) throws Exception {
        return asLibrarian(post("/library/parts/" + part.id() + "/vetting").param("vetting", state).param("reason", reason)
                .param("version", Long.toString(part.version())));
    }

    @Test
    void aPartIsNotVettedWhileSomethingOfTheListIsOpen() throws Exception {
        TeamBench bench = bench();
        vet(bench.part(), "vetted", "").andExpect(status().isOk()).andExpect(content().string(allOf(
                containsString("cannot be vetted yet"), containsString("a reference to the datasheet"), containsString("at least one sweep"))));
        assertThat(bench.part().vetting()).isEqualTo(Vetting.PROPOSED);
    }

    @Test
    void aStatedReasonStandsInForASweepButNotForADatasheet() throws Exception {
        TeamBench bench = bench();
        String path = "/library/parts/" + bench.part().id();
        asLibrarian(post(path + "/exemptions").param("item", "DATASHEET").param("exemption", "never mind"))
                .andExpect(status().isOk()).andExpect(content().string(containsString("One field needs attention")));
        asLibrarian(post(path + "/exemptions").param("item", "SWEEP").param("exemption", "the bench is <b>away</b>"))
                .andExpect(redirectedUrl(path));
        asLibrarian(get(path)).andExpect(content().string(allOf(
                containsString("the bench is &lt;b&gt;away&lt;/b&gt;"), not(containsString("<b>away</b>")), containsString("Open: 1 of 3"))));
    }

    @Test
    void norIsItRestrictedForThatWouldApproveIt() throws Exception {
        TeamBench bench = bench();
        vet(bench.part(), "restricted", "below 60 degC only").andExpect(status().isOk()).andExpect(content().string(allOf(
                containsString("cannot be restricted yet"), containsString("a reference to the datasheet"), containsString("below 60 degC only"))));
        assertThat(bench.part().vetting()).isEqualTo(Vetting.PROPOSED);
    }

    /** Complete, with a reason instead of a sweep. */
    private Part restricted(TeamBench bench) throws Exception {
        CurrentPerson engineer = people.with(Role.ENGINEER);
        Part part = TeamBench.as(engineer, () -> library.propose(TeamBench.documented(TeamBench.polymer("FULL-" + bench.unique(), 0.005)), engineer));
        asLibrarian(post("/library/parts/" + part.id() + "/exemptions").param("item", "SWEEP").param("exemption", "the bench is away"));
        vet(part, "restricted", "below 60 degC only").andExpect(status().is3xxRedirection());
        return library.find(part.id()).orElseThrow();
    }

    @Test
    void aRevisionThatTakesAnItemFromAnApprovedPartIsRefusedAndKeepsWhatWasTyped() throws Exception {
        Part part = restricted(bench());
        Form form = PartForm.fill(part.document());
        MultiValueMap<String, String> typed = new LinkedMultiValueMap<>();
        PartsCsv.columns().stream().filter(field -> form.get(field) != null).forEach(field -> typed.add(field, form.get(field)));
        typed.set("datasheetDocument", "");
        typed.set("rippleCurrent", "");
        typed.set("rippleFrequency", "");
        typed.set("rippleTemperature", "");
        typed.set("note", "kept as typed");
        typed.add("version", Long.toString(part.version()));
        typed.add("from", "1");
        String edit = "/library/parts/" + part.id() + "/edit";
        asLibrarian(post(edit).params(typed)).andExpect(status().isOk()).andExpect(content().string(allOf(
                containsString("is restricted, and would lack a reference to the datasheet; a ripple current rating, for bulk technologies."),
                containsString("kept as typed"))));
        assertThat(library.find(part.id()).orElseThrow().latestNumber()).isEqualTo(1);
        typed.set("datasheetDocument", "Sheet 2");
        asLibrarian(post(edit).params(typed)).andExpect(content().string(allOf(
                containsString("would lack a ripple current rating"), not(containsString("would lack a reference")))));
        vet(part, "proposed", "").andExpect(status().is3xxRedirection());
        typed.set("version", Long.toString(library.find(part.id()).orElseThrow().version()));
        asLibrarian(post(edit).params(typed)).andExpect(redirectedUrl("/library/parts/" + part.id()));
    }

    @Test
    void aTableOfPartsCannotTakeAnItemAwayEither() throws Exception {
        Part part = restricted(bench());
        BulkPlan plan = BulkPlan.of(PartsCsv.read(PartsCsv.write(List.of(TeamBench.polymer(part.partNumber(), 0.005)))), library, people.with(Role.LIBRARIAN));
        assertThat(plan.steps()).singleElement().matches(step -> step.refusal().contains("would lack a reference to the datasheet."));
    }

    @Test
    void aListThatGrewStandsInTheWayOfNoCorrection() {
        PartDocument bare = TeamBench.polymer("X", 0.005);
        List<VettingItem> grown = List.of(VettingItem.DATASHEET, VettingItem.COST);
        VettingChecklist before = VettingChecklist.of(TeamBench.documented(bare), List.of(), grown, Map.of());
        assertThat(before.lostSince(before)).isEmpty();
        assertThat(VettingChecklist.of(bare, List.of(), grown, Map.of()).lostSince(before)).isEqualTo("a reference to the datasheet");
    }

    @Test
    void aCompletePartIsVetted() {
        PartDocument bare = TeamBench.polymer("X", 0.005);
        List<VettingItem> asked = SettingsDocument.DEFAULT.vettingItems();
        Map<VettingItem, VettingChecklist.Exemption> why = Map.of(VettingItem.SWEEP, new VettingChecklist.Exemption(VettingItem.SWEEP, "b", "c"));
        assertThat(VettingChecklist.of(bare, List.of(), asked, Map.of()).open()).extracting(VettingChecklist.Line::item)
                .containsExactly(VettingItem.DATASHEET, VettingItem.SWEEP);
        assertThat(VettingChecklist.of(TeamBench.documented(bare), List.of(), asked, why).done()).isTrue();
        assertThat(VettingChecklist.of(TeamBench.documented(bare), List.of(), List.of(VettingItem.COST, VettingItem.SIZE), why).open())
                .extracting(VettingChecklist.Line::item).containsExactly(VettingItem.COST);
    }

    @Test
    void theBiasCurveIsAskedOfCeramicsOfClass2Only() {
        PartDocument polymer = TeamBench.polymer("X", 0.005);
        PartDocument ceramic = new PartDocument("Y", "Z", Technology.CERAMIC_CLASS_2, 1e-6, polymer.tolerancePercent(), 16, List.of(), null, null,
                null, null, null, null, "X7R", null, null, null, null, null, null, ModelChoice.DATASHEET, null, null, null);
        List<VettingItem> asked = List.of(VettingItem.BIAS_CURVE, VettingItem.RIPPLE_RATING);
        assertThat(VettingChecklist.of(ceramic, List.of(), asked, Map.of()).lines()).extracting(VettingChecklist.Line::item)
                .containsExactly(VettingItem.BIAS_CURVE);
        assertThat(VettingChecklist.of(polymer, List.of(), asked, Map.of()).lines()).extracting(VettingChecklist.Line::item)
                .containsExactly(VettingItem.RIPPLE_RATING);
    }

    @Test
    void aRevisionShowsWhatItChanged() throws Exception {
        TeamBench bench = bench();
        bench.revisePart(0.05);
        asLibrarian(get("/library/parts/" + bench.part().id() + "/revisions/2/differences")).andExpect(status().isOk())
                .andExpect(content().string(allOf(containsString("ESR 5\u00a0m\u03a9 typical at 100\u00a0kHz"), containsString("ESR 50\u00a0m\u03a9 typical at 100\u00a0kHz"),
                        not(containsString("Rated voltage")))));
    }

    @Test
    void aRevisedPartMarksItsBanksAndShowsWhatTurns() throws Exception {
        TeamBench bench = bench();
        Bank bank = bench.addBank(4);
        String bankPath = "/banks/" + bank.id();
        asLibrarian(get(bankPath)).andExpect(content().string(not(containsString("Evidence changed"))));
        bench.revisePart(0.5);
        asLibrarian(get(bankPath)).andExpect(content().string(allOf(
                containsString("Evidence changed"), containsString("has revision 2, this bank rests on revision 1"))));
        asLibrarian(get("/library/parts/" + bench.part().id())).andExpect(content().string(containsString("evidence changed")));
        asLibrarian(get("/library/parts/" + bench.part().id() + "/effects")).andExpect(status().isOk()).andExpect(content().string(allOf(
                containsString("Evidence changed for 1 of 1"), containsString("turns</strong>"), containsString(bank.name()))));
        assertThat(library.findRevision(bank.document().branches().get(0).partRevisionId()).orElseThrow().revision().number()).isEqualTo(1);
    }

    @Test
    void aWithdrawalMarksBanksSavedBeforeItAndNotThoseSavedAfter() throws Exception {
        TeamBench bench = bench();
        Bank before = bench.addBank(4);
        vet(bench.part(), "withdrawn", "use something else").andExpect(redirectedUrl("/library/parts/" + bench.part().id()));
        Bank after = bench.addBank(4);
        asLibrarian(get("/banks/" + before.id())).andExpect(content().string(containsString("is withdrawn (use something else)")));
        asLibrarian(get("/banks/" + after.id())).andExpect(content().string(not(containsString("Evidence changed"))));
    }

    private ResultActions withdraw(Part part, String reason, String replacement) throws Exception {
        return asLibrarian(post("/library/parts/" + part.id() + "/vetting").param("vetting", "withdrawn").param("reason", reason)
                .param("replacement", replacement).param("version", Long.toString(part.version())));
    }

    private Part another(TeamBench bench, String start, double esrOhm) {
        CurrentPerson engineer = people.with(Role.ENGINEER);
        return TeamBench.as(engineer, () -> library.propose(TeamBench.polymer(start + bench.unique(), esrOhm), engineer));
    }

    @Test
    void aReplacementStandsOnThePartsPageInTheRecordAndUnderItsBanks() throws Exception {
        TeamBench bench = bench();
        Bank bank = bench.addBank(4);
        Part next = another(bench, "NEXT-", 0.5);
        String path = "/library/parts/" + bench.part().id();
        withdraw(bench.part(), "no longer made", next.partNumber()).andExpect(redirectedUrl(path));
        asLibrarian(get(path)).andExpect(content().string(allOf(
                containsString("withdrawn: no longer made"), containsString("; replaced by <a href=\"/library/parts/" + next.id() + "\">" + next.partNumber()))));
        asLibrarian(get("/banks/" + bank.id())).andExpect(content().string(containsString(
                bench.part().partNumber() + " is withdrawn (no longer made); replaced by " + next.partNumber() + ".")));
        asLibrarian(get("/banks/parts").param("text", bench.part().partNumber()).param("purpose", "REPLACEMENT")).andExpect(content().string(allOf(
                containsString("no longer made; replaced by " + next.partNumber()), containsString("aria-disabled"), not(containsString("figures typed here")))));
        asLibrarian(get(path + "/effects")).andExpect(content().string(allOf(
                containsString("no alternate is named; after, its replacement " + next.partNumber() + " takes the place, mounted alike."),
                containsString("turns</strong>"))));
        assertThat(jdbc.sql("select detail from audit_event where subject_id = :id and action = 'part withdrawn'")
                .param("id", bench.part().id().toString()).query(String.class).single())
                .contains("\"replacement\":\"" + next.partNumber() + "\"");
    }

    @Test
    void theEffectFollowsAReplacementThatWasItselfReplaced() throws Exception {
        TeamBench bench = bench();
        bench.addBank(4);
        Part next = another(bench, "NEXT-", 0.5);
        Part last = another(bench, "LAST-", 0.005);
        withdraw(bench.part(), "", next.partNumber()).andExpect(status().is3xxRedirection());
        withdraw(next, "", last.partNumber()).andExpect(status().is3xxRedirection());
        asLibrarian(get("/library/parts/" + bench.part().id() + "/effects")).andExpect(content().string(allOf(
                containsString("its replacement " + last.partNumber() + " takes the place"), not(containsString("turns</strong>")))));
    }

    @Test
    void aWithdrawalNeedsAReasonOrAReplacementThatMayBeUsed() throws Exception {
        TeamBench bench = bench();
        Part gone = another(bench, "GONE-", 0.005);
        withdraw(bench.part(), "", "").andExpect(content().string(containsString("A replacement, or the reason why there is none, is missing")));
        withdraw(bench.part(), "kept as typed", "NO-SUCH").andExpect(content().string(allOf(
                containsString("Replacement: the library has no part &#39;NO-SUCH&#39;"), containsString("value=\"NO-SUCH\""), containsString(">kept as typed</textarea>"))));
        withdraw(bench.part(), "", bench.part().partNumber()).andExpect(content().string(containsString("cannot replace itself")));
        withdraw(gone, "no longer made", "").andExpect(status().is3xxRedirection());
        withdraw(bench.part(), "", gone.partNumber()).andExpect(content().string(
                containsString("Replacement: " + gone.partNumber() + " is itself withdrawn (no longer made)")));
        assertThat(bench.part().vetting()).isEqualTo(Vetting.PROPOSED);
    }

    @Test
    void thereIsNoEffectOfAPartThatIsNot() throws Exception {
        asLibrarian(get("/library/parts/" + UUID.randomUUID() + "/effects")).andExpect(status().isNotFound());
    }
}
