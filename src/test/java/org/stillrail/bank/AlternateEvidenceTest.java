package org.stillrail.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.library.PartUses;
import org.stillrail.support.AppTest;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;

/** An approved bank rests on its alternates as much as on the parts that it names. */
@AppTest
class AlternateEvidenceTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Library library;

    @Autowired
    private Banks banks;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private PartUses uses;

    private CurrentPerson engineer;
    private TeamBench bench;
    private Part alternate;
    private Bank bank;

    /** Four polymer capacitors of 5 mohm; one of 6 mohm may stand in their places. */
    @BeforeEach
    void anApprovedBankWithAnAlternate() throws Exception {
        engineer = people.another(Role.ENGINEER);
        bench = new TeamBench(context, engineer);
        alternate = TeamBench.as(engineer, () -> library.propose(TeamBench.documented(TeamBench.polymer("ALT-" + bench.unique(), 0.006)), engineer));
        BranchDocument branch = new BranchDocument("bulk", 4, bench.part().id(), bench.part().revision().id(), null, SeriesPath.NONE, SeriesPath.NONE)
                .withAlternates(List.of(new BranchDocument.Alternate(alternate.id(), alternate.revision().id())), null);
        BankDocument document = new BankDocument(bench.rail().revision().id(), null, List.of(branch), null);
        bank = TeamBench.as(engineer, () -> banks.add(bench.rail().id(), "Bank " + bench.unique(), document, engineer));
        String base = "/banks/" + bank.id() + "/revisions/1";
        mvc.perform(post(base + "/submit").with(people.as(engineer)).with(csrf())).andExpect(status().is3xxRedirection());
        String sha256 = jdbc.sql("select sha256 from review_snapshot where revision_id = :id").param("id", bank.revision().id())
                .query(String.class).single();
        mvc.perform(post(base + "/approve").param("sha256", sha256).param("password", TestPeople.PASSWORD).with(people.as(Role.REVIEWER)).with(csrf()))
                .andExpect(status().is3xxRedirection());
        assertThat(banks.require(bank.id()).state()).isEqualTo(BankState.APPROVED);
    }

    private ResultActions asLibrarian(MockHttpServletRequestBuilder call) throws Exception {
        return mvc.perform(call.with(people.as(Role.LIBRARIAN)).with(csrf()));
    }

    private void vet(Part part, String state, String reason) throws Exception {
        asLibrarian(post("/library/parts/" + part.id() + "/vetting").param("vetting", state).param("reason", reason)
                .param("version", Long.toString(part.version()))).andExpect(status().is3xxRedirection());
    }

    private ResultActions effects(Part part) throws Exception {
        return asLibrarian(get("/library/parts/" + part.id() + "/effects")).andExpect(status().isOk());
    }

    /** Wherever a bank is listed or waits for its author; what was approved is still so. */
    private void requireMarkedEverywhere(String sentence) throws Exception {
        assertThat(uses.of(alternate.id())).singleElement().matches(use -> use.evidenceChanged() && use.name().equals(bank.name()));
        asLibrarian(get("/library/parts/" + alternate.id())).andExpect(content().string(allOf(
                containsString(bank.name()), containsString("evidence changed"))));
        asLibrarian(get("/banks/" + bank.id())).andExpect(content().string(allOf(
                containsString("Evidence changed"), containsString(sentence))));
        asLibrarian(get("/projects/" + bench.project().id())).andExpect(content().string(containsString("evidence changed")));
        mvc.perform(get("/waiting").with(people.as(engineer))).andExpect(content().string(allOf(
                containsString("Approved, but evidence changed"), containsString(alternate.partNumber()))));
        assertThat(banks.require(bank.id()).state()).isEqualTo(BankState.APPROVED);
        assertThat(banks.require(bank.id()).document()).isEqualTo(bank.document());
    }

    @Test
    void theBankIsAmongThoseThatUseItAndUnmarkedUntilItChanges() throws Exception {
        assertThat(uses.of(alternate.id())).singleElement().matches(use -> !use.evidenceChanged())
                .matches(use -> use.name().equals(bank.name()) && use.note().equals("revision 1, approved"));
        asLibrarian(get("/banks/" + bank.id())).andExpect(content().string(not(containsString("Evidence changed"))));
        effects(alternate).andExpect(content().string(allOf(
                containsString("An alternate in branch &#39;bulk&#39;."), containsString("No verdict and no value changes."))));
    }

    @Test
    void aRevisionThatBreaksTheRippleTurnsTheVerdict() throws Exception {
        TeamBench.as(engineer, () -> library.revise(alternate.id(), alternate.version(), TeamBench.polymer(alternate.partNumber(), 0.5), engineer));
        requireMarkedEverywhere("has revision 2, this bank rests on revision 1");
        effects(alternate).andExpect(content().string(allOf(
                containsString("Evidence changed for 1 of 1"), containsString("turns</strong>"), containsString("not met, "))));
    }

    @Test
    void aWithdrawalTakesItOutOfTheWaysToFitTheBank() throws Exception {
        vet(alternate, "withdrawn", "use " + bench.part().partNumber());
        requireMarkedEverywhere("is withdrawn (use " + bench.part().partNumber() + ")");
        effects(alternate).andExpect(content().string(allOf(
                containsString("An alternate in branch &#39;bulk&#39;: after, it is not fitted there."), containsString("No verdict turns; values move."))));
    }

    @Test
    void aWithdrawnNamedPartGivesWayToItsAlternate() throws Exception {
        vet(bench.part(), "withdrawn", "use the alternate");
        effects(bench.part()).andExpect(content().string(allOf(
                containsString("after, its alternate " + alternate.partNumber() + " takes the place."), not(containsString("turns</strong>")))));
    }

    @Test
    void aRestrictionMarksTheBankThoughNoFigureChanges() throws Exception {
        asLibrarian(post("/library/parts/" + alternate.id() + "/exemptions").param("item", "SWEEP").param("exemption", "the bench is away"));
        vet(alternate, "restricted", "below 85 degC only");
        requireMarkedEverywhere("is restricted (below 85 degC only)");
        effects(alternate).andExpect(content().string(allOf(
                containsString("below 85 degC only"), containsString("Evidence changed for 1 of 1"), containsString("No verdict and no value changes."))));
    }
}
