package org.stillrail.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.library.Library;
import org.stillrail.library.Vetting;
import org.stillrail.project.Rail;
import org.stillrail.project.RailTraits;
import org.stillrail.support.AppTest;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;

@AppTest
class PriorDesignsTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Banks banks;

    @Autowired
    private PriorDesigns designs;

    @Autowired
    private Library library;

    private TeamBench bench() {
        return new TeamBench(context, people.with(Role.ENGINEER));
    }

    /** As if a review had gone through; the way there is the room of reviews'. */
    private Bank approved(Bank bank) {
        banks.changeState(bank, BankState.IN_WORK, BankState.APPROVED);
        return bank;
    }

    private static PriorDesigns.Filter only(TeamBench bench, UUID exceptRail) {
        return new PriorDesigns.Filter(null, "%" + bench.unique() + "%", null, exceptRail);
    }

    @Test
    void theNearestApprovedBankComesFirstAndOthersAreNotShown() {
        TeamBench bench = bench();
        Bank far = approved(bench.addBank(bench.addRail("12 A", TeamBench.figures(3.3, 12, 500e3, null)), 4));
        Bank near = approved(bench.addBank(bench.addRail("6 A", TeamBench.figures(3.3, 6, 500e3, null)), 4));
        bench.addBank(bench.addRail("5 A", TeamBench.figures(3.3, 5, 500e3, null)), 4);
        RailTraits asked = new RailTraits(3.3, 5, 500e3, null);
        List<PriorDesigns.Near> found = designs.near(asked, only(bench, null), 10);
        assertThat(found).extracting(each -> each.design().bankId()).containsExactly(near.id(), far.id());
        assertThat(designs.near(asked, new PriorDesigns.Filter(null, "%" + bench.unique() + "%", 1.0, null), 10)).hasSize(1);
        assertThat(designs.near(asked, only(bench, near.railId()), 10)).extracting(each -> each.design().bankId()).containsExactly(far.id());
    }

    @Test
    void oneClickCopiesABankAndShowsWhichVerdictsHoldHere() throws Exception {
        TeamBench bench = bench();
        Bank there = approved(bench.addBank(bench.addRail("6 A", TeamBench.figures(3.3, 6, 500e3, null)), 4));
        bench.revisePart(0.006);
        Rail here = bench.rail();
        mvc.perform(get("/prior-designs").param("rail", here.id().toString()).param("project", bench.unique()).with(people.as(Role.ENGINEER)))
                .andExpect(content().string(allOf(containsString(there.name()), containsString("Copy to this rail"), containsString("1.2 times as much"))));
        String to = mvc.perform(post("/rails/" + here.id() + "/banks/copies").param("revision", there.revision().id().toString())
                .with(people.as(Role.ENGINEER)).with(csrf())).andExpect(status().is3xxRedirection()).andReturn().getResponse().getRedirectedUrl();
        Bank copy = banks.ofRail(here.id()).get(0);
        assertThat(copy.state()).isEqualTo(BankState.IN_WORK);
        assertThat(copy.latestNumber()).isEqualTo(1);
        assertThat(copy.document().branches().get(0).partRevisionId()).isEqualTo(bench.part().revision().id());
        mvc.perform(get(to).with(people.as(Role.ENGINEER))).andExpect(status().isOk()).andExpect(content().string(allOf(
                containsString("Ripple, peak to peak"), containsString("6 A"), containsString("3V3"), containsString("the same parts"))));
    }

    private void withdrawPart(TeamBench bench, String reason) {
        CurrentPerson librarian = people.with(Role.LIBRARIAN);
        TeamBench.as(librarian, () -> {
            library.changeVetting(bench.part().id(), bench.part().version(), Vetting.WITHDRAWN, reason, null, librarian);
            return null;
        });
    }

    @Test
    void anApprovedBankWhosePartChangedSinceIsMarkedAndItsCopyNamesThePart() throws Exception {
        TeamBench bench = bench();
        Rail here = bench.rail();
        Bank there = approved(bench.addBank(bench.addRail("6 A", TeamBench.figures(3.3, 6, 500e3, null)), 4));
        String address = "/prior-designs?voltage=3.3&current=5&switching=500k&project=" + bench.unique();
        mvc.perform(get(address).with(people.as(Role.VIEWER))).andExpect(content().string(allOf(
                containsString(there.name()), not(containsString("evidence changed")))));
        withdrawPart(bench, "two failed short");
        mvc.perform(get(address).with(people.as(Role.VIEWER))).andExpect(content().string(containsString("evidence changed</span>")));
        mvc.perform(post("/rails/" + here.id() + "/banks/copies").param("revision", there.revision().id().toString())
                .with(people.as(Role.ENGINEER)).with(csrf())).andExpect(flash().attribute("notice",
                        endsWith(" Look at its parts before you go on: " + bench.part().partNumber() + " is withdrawn (two failed short).")));
    }

    @Test
    void anApprovedRevisionBelowOneInWorkIsMarkedOnItsRailAndProject() throws Exception {
        TeamBench bench = bench();
        Bank bank = approved(bench.addBank(4));
        String rail = "/rails/" + bench.rail().id();
        withdrawPart(bench, "two failed short");
        bench.revise(bank, 5);
        for (String page : List.of(rail, "/projects/" + bench.project().id())) {
            mvc.perform(get(page).with(people.as(Role.VIEWER))).andExpect(content().string(allOf(
                    containsString("/banks/" + bank.id() + "/revisions/1\">Revision 1</a>"), containsString("evidence changed"))));
        }
        banks.changeState(banks.requireRevision(bank.revision().id()), BankState.APPROVED, BankState.SUPERSEDED);
        mvc.perform(get(rail).with(people.as(Role.VIEWER))).andExpect(content().string(not(containsString("evidence changed"))));
    }

    @Test
    void whoSubmitsAndWhoSignsReadWhichPartsAreNotVetted() throws Exception {
        TeamBench bench = bench();
        Bank bank = bench.addBank(4);
        String path = "/banks/" + bank.id();
        String line = "<strong>Not vetted:</strong> <span>" + bench.part().partNumber() + " is proposed.</span>";
        mvc.perform(get(path).with(people.as(Role.ENGINEER))).andExpect(content().string(containsString(line)));
        mvc.perform(post(path + "/revisions/1/submit").with(people.as(Role.ENGINEER)).with(csrf())).andExpect(status().is3xxRedirection());
        mvc.perform(get(path).with(people.as(Role.REVIEWER))).andExpect(content().string(containsString(line)));
    }

    /** A newcomer describes a rail first; what was described goes along into the form of a new one. */
    @Test
    void aDescriptionBecomesARailOfAProjectThatThePersonWorksIn() throws Exception {
        CurrentPerson engineer = people.another(Role.ENGINEER);
        TeamBench bench = new TeamBench(context, engineer);
        String link = "/projects/" + bench.project().id() + "/rails/new?nominalVoltage=3.3&amp;nominalCurrent=5&amp;switching=500k&amp;stepTo=";
        String address = "/prior-designs?voltage=3.3&current=5&switching=500k";
        mvc.perform(get(address).with(people.as(engineer))).andExpect(content().string(containsString(link)));
        mvc.perform(get(address).with(people.as(Role.VIEWER))).andExpect(content().string(not(containsString("Make a rail of this"))));
        mvc.perform(get("/projects/" + bench.project().id() + "/rails/new?nominalVoltage=3.3&switching=500k").with(people.as(engineer)))
                .andExpect(content().string(allOf(containsString("name=\"nominalVoltage\" value=\"3.3\""), containsString("name=\"switching\" value=\"500k\""))));
    }

    @Test
    void whoIsNoMemberCopiesNothing() throws Exception {
        TeamBench bench = bench();
        Bank there = approved(bench.addBank(4));
        mvc.perform(post("/rails/" + bench.rail().id() + "/banks/copies").param("revision", there.revision().id().toString())
                .with(people.as(people.another(Role.ENGINEER))).with(csrf())).andExpect(status().isForbidden());
        mvc.perform(get("/prior-designs").param("rail", bench.rail().id().toString()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(not(containsString("Copy to this rail"))));
    }

    @Test
    void aDescriptionThatCannotBeReadIsSaidAndKept() throws Exception {
        mvc.perform(get("/prior-designs").param("voltage", "lots").param("current", "5").with(people.as(Role.VIEWER))).andExpect(status().isOk())
                .andExpect(content().string(allOf(containsString("value=\"lots\""), containsString("2 fields need attention"))));
    }

    @Test
    void twoToSixBanksAreCompared() throws Exception {
        TeamBench bench = bench();
        String a = bench.addBank(4).id().toString();
        String b = bench.addBank(1).id().toString();
        mvc.perform(get("/compare").param("bank", a).with(people.as(Role.VIEWER))).andExpect(status().isOk())
                .andExpect(content().string(containsString("One bank is chosen; choose one to five more.")));
        String other = "/compare?bank=" + a + "&amp;bank=" + b + "\"";
        mvc.perform(get("/compare").param("bank", a).param("find", bench.unique()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(allOf(containsString(other), containsString("Project " + bench.unique()))));
        mvc.perform(get("/compare").param("bank", a).param("find", bench.unique() + " nowhere").with(people.as(Role.VIEWER)))
                .andExpect(content().string(allOf(not(containsString(other)), containsString("No other bank holds every word of"))));
        mvc.perform(get("/compare").param("bank", Stream.generate(() -> UUID.randomUUID().toString()).limit(7).toArray(String[]::new))
                .with(people.as(Role.VIEWER))).andExpect(content().string(containsString("two to six banks to compare; more were chosen")));
        mvc.perform(get("/compare").param("bank", a, b).with(people.as(Role.VIEWER))).andExpect(status().isOk()).andExpect(content().string(allOf(
                containsString("4 \u00d7 TEAM-"), containsString("1 \u00d7 TEAM-"), containsString("Largest height"), containsString("not met"))));
        mvc.perform(get("/compare").param("bank", a, UUID.randomUUID().toString()).with(people.as(Role.VIEWER))).andExpect(status().isNotFound());
    }

    @Test
    void everythingIsFoundByItsWords() throws Exception {
        TeamBench bench = bench();
        Bank bank = bench.addBank(4);
        mvc.perform(post("/banks/" + bank.id() + "/revisions/1/comments").param("commentRemark", "Mind the 100 %_" + bench.unique() + " <i>label</i>")
                .with(people.as(Role.ENGINEER)).with(csrf()));
        mvc.perform(get("/find").param("q", bench.unique().toUpperCase(Locale.ROOT)).with(people.as(Role.VIEWER))).andExpect(status().isOk())
                .andExpect(content().string(allOf(containsString("TEAM-" + bench.unique()), containsString("Project " + bench.unique()),
                        containsString("Mind the 100 %_"), not(containsString("<i>label</i>")))));
        mvc.perform(get("/find").param("q", "%_" + bench.unique()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(allOf(containsString("Mind the"), not(containsString("TEAM-" + bench.unique())))));
        mvc.perform(get("/find").param("q", "label " + bench.unique() + " mind").with(people.as(Role.VIEWER)))
                .andExpect(content().string(allOf(containsString("Mind the 100 %_"), not(containsString("TEAM-" + bench.unique())))));
        mvc.perform(get("/find").param("q", "tried " + bench.unique()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("/projects/" + bench.project().id())));
        mvc.perform(get("/find").param("q", "mislabelled " + bench.unique()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(containsString("Nothing holds every word of")));
        mvc.perform(get("/find").param("q", bank.name()).with(people.as(Role.VIEWER))).andExpect(content().string(containsString("/banks/" + bank.id())));
        mvc.perform(get("/find").with(people.as(Role.VIEWER))).andExpect(status().isOk());
    }
}
