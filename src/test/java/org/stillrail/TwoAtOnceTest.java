package org.stillrail;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.bank.Bank;
import org.stillrail.library.Part;
import org.stillrail.support.AppTest;
import org.stillrail.support.Endpoint;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;

/**
 * Two people open the same page and both send it: the first is stored, the second is told of it and finds what was typed still
 * there. Every endpoint that writes is named below by how it keeps that promise, so a new one has to be placed as well.
 */
@AppTest
class TwoAtOnceTest {

    /** Carry the version that their page was opened at; tried here, or in the browser by {@code SharedWorkJourney} (part, bank). */
    private static final Set<String> VERSIONED = Set.of(
            "/rails/{railId}/edit", "/library/parts/{partId}/edit", "/banks/{bankId}", "/settings", "/library/parts/{partId}/vetting",
            "/library/parts/{partId}/model", "/projects/{projectId}/members", "/projects/{projectId}/members/{personId}/remove",
            "/projects/{projectId}/signatures", "/people/{id}/roles", "/library/parts/{partId}/exemptions",
            "/library/sweeps/{sweepId}/findings/accept", "/banks/{bankId}/revisions/{number}/bench/{recordId}/mounting", "/library/bulk");

    /** Only ever add something of their own, under a name that is refused where it is taken: both people's is kept. */
    private static final Set<String> ADD = Set.of(
            "/library/parts/new", "/library/fixtures", "/library/parts/{partId}/sweeps", "/projects", "/projects/{projectId}/rails/new",
            "/rails/{railId}/banks/new", "/rails/{railId}/banks/copies", "/scratch", "/banks/{bankId}/revisions/{number}/bench",
            "/banks/{bankId}/revisions/{number}/comments", "/people", "/account/tokens", "/projects/import");

    /** A step of one revision, refused where the revision is no longer in the state that it starts from ({@code ReviewStepTest}). */
    private static final Set<String> STEPS = Set.of("/banks/{bankId}/revisions/{number}/submit", "/banks/{bankId}/revisions/{number}/approve",
            "/banks/{bankId}/revisions/{number}/return", "/banks/{bankId}/revisions/{number}/recall");

    /** Store nothing, or do to one account what does not hang on what it was. */
    private static final Set<String> WITHOUT_A_DOCUMENT = Set.of("/library/parts/{partId}/sweeps/preview", "/library/bulk/preview", "/banks/preview",
            "/banks/judgement", "/banks/cards", "/reviews/snapshots/{snapshotId}/recompute", "/setup", "/account/password",
            "/account/tokens/{id}/revoke", "/people/{id}/deactivate", "/people/{id}/reactivate", "/people/{id}/password",
            "/people/{id}/tokens/{tokenId}/revoke", "/sign-in", "/sign-out");

    @Autowired
    private ApplicationContext context;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    private TeamBench bench;
    private CurrentPerson engineer;

    @BeforeEach
    void makeAProject() {
        engineer = people.with(Role.ENGINEER);
        bench = new TeamBench(context, engineer);
    }

    @Test
    void everyEndpointThatWritesIsPlaced() {
        Set<String> unplaced = new TreeSet<>();
        for (Endpoint endpoint : Endpoint.all(context)) {
            boolean placed = VERSIONED.contains(endpoint.path()) || ADD.contains(endpoint.path()) || STEPS.contains(endpoint.path())
                    || WITHOUT_A_DOCUMENT.contains(endpoint.path());
            if (!endpoint.method().equals("GET") && !endpoint.isApi() && !placed && !endpoint.path().equals("/error")) {
                unplaced.add(endpoint.name());
            }
        }
        assertThat(unplaced).isEmpty();
    }

    @Test
    void aRail() throws Exception {
        String path = "/rails/" + bench.rail().id();
        Map<String, String> typed = new LinkedHashMap<>(Map.of("version", Long.toString(bench.rail().version()), "nominalVoltage", "3.3",
                "nominalCurrent", "5", "inputMinimum", "10", "inputNominal", "12", "inputMaximum", "14", "topology", "BUCK", "inductance", "2u2",
                "resistance", "10m", "phases", "1"));
        typed.put("from", Integer.toString(bench.rail().latestNumber()));
        typed.putAll(Map.of("switching", "500k", "control", "VOLTAGE_MODE", "ramp", "1", "crossover", "40k", "phaseMargin", "55",
                "ambientMinimum", "-20", "ambientNominal", "25", "ambientMaximum", "60", "ambientDocument", "Board requirements"));
        both(path + "/edit", engineer, engineer, with(typed, "purpose", "Written first"), with(typed, "purpose", "Written second"),
                "saved revision 2 at", "Written second");
        assertThat(bench.rail().revision().document().purpose()).isEqualTo("Written first");
    }

    @Test
    void theVettingOfAPart() throws Exception {
        Part part = bench.part();
        CurrentPerson librarian = people.with(Role.LIBRARIAN);
        Map<String, String> typed = Map.of("version", Long.toString(part.version()), "vetting", "withdrawn");
        both("/library/parts/" + part.id() + "/vetting", librarian, people.another(Role.LIBRARIAN), with(typed, "reason", "no longer made"),
                with(typed, "reason", "two failed short"), "changed by somebody else", "two failed short");
        assertThat(bench.part().vettingReason()).isEqualTo("no longer made");
    }

    @Test
    void theReasonInsteadOfASweep() throws Exception {
        String path = "/library/parts/" + bench.part().id();
        CurrentPerson librarian = people.with(Role.LIBRARIAN);
        both(path + "/exemptions", librarian, librarian, Map.of("item", "SWEEP", "exemption", "the first reason"),
                Map.of("item", "SWEEP", "exemption", "the second reason"), "has stated a reason", "the second reason");
        assertThat(page(path, librarian)).contains("the first reason").doesNotContain("the second reason");
    }

    @Test
    void membersAndSignatures() throws Exception {
        String path = "/projects/" + bench.project().id();
        CurrentPerson other = people.another(Role.ENGINEER);
        CurrentPerson third = people.another(Role.ENGINEER);
        String version = hidden(page(path, engineer), "version");
        both(path + "/members", engineer, engineer, Map.of("version", version, "person", other.id().toString()),
                Map.of("version", version, "person", third.id().toString()), "changed by somebody else", "value=\"" + third.id() + "\" selected");
        assertThat(page(path, engineer)).contains("members/" + other.id() + "/remove").doesNotContain("members/" + third.id() + "/remove");
        version = hidden(page(path, engineer), "version");
        both(path + "/signatures", engineer, other, Map.of("version", version, "signatures", "2"), Map.of("version", version, "signatures", "2"),
                "changed by somebody else", "Two reviewers sign");
        version = hidden(page(path, engineer), "version");
        send(path + "/signatures", engineer, Map.of("version", version, "signatures", "1"));
        MockHttpServletResponse stale = send(path + "/members/" + other.id() + "/remove", engineer, Map.of("version", version));
        assertThat(stale.getContentAsString()).contains("changed by somebody else", "members/" + other.id() + "/remove");
    }

    @Test
    void theRolesOfAPerson() throws Exception {
        CurrentPerson person = people.another(Role.VIEWER);
        String path = "/people/" + person.id();
        CurrentPerson administrator = people.with(Role.ADMINISTRATOR);
        both(path + "/roles", administrator, administrator, Map.of("seen", "VIEWER", "roles", "LIBRARIAN"), Map.of("seen", "VIEWER", "roles", "REVIEWER"),
                "is now", "value=\"REVIEWER\" checked");
        assertThat(page(path, administrator)).contains("value=\"LIBRARIAN\" checked").doesNotContain("value=\"REVIEWER\" checked");
    }

    /** Two banks of one name, two comments at once: each is kept, or refused with what was typed. */
    @Test
    void whatIsAddedIsKeptOfBoth() throws Exception {
        Bank bank = bench.addBank(4);
        String comments = "/banks/" + bank.id() + "/revisions/1/comments";
        assertThat(send(comments, engineer, Map.of("commentRemark", "From one side")).getStatus()).isEqualTo(302);
        assertThat(send(comments, people.with(Role.REVIEWER), Map.of("commentRemark", "From the other side")).getStatus()).isEqualTo(302);
        assertThat(page("/banks/" + bank.id(), engineer)).contains("From one side", "From the other side");
        assertThat(send("/projects", engineer, Map.of("name", "One name " + bench.unique(), "purpose", "First")).getStatus()).isEqualTo(302);
        MockHttpServletResponse taken = send("/projects", engineer, Map.of("name", "One name " + bench.unique(), "purpose", "Typed second"));
        assertThat(taken.getContentAsString()).contains("Typed second", "value=\"One name " + bench.unique() + "\"");
    }

    /** @param kept what the second person's page still holds of what was typed */
    private void both(
            String path, CurrentPerson first, CurrentPerson second, Map<String, String> firstTyped, Map<String, String> secondTyped, String told, String kept)
            throws Exception {
        assertThat(send(path, first, firstTyped).getStatus()).as("the first is stored").isEqualTo(302);
        MockHttpServletResponse answer = send(path, second, secondTyped);
        assertThat(answer.getStatus()).as("the second gets the page again").isIn(200, 409, 422);
        assertThat(answer.getContentAsString().replaceAll("\\s+", " ").replace("&#39;", "'")).contains(told, kept);
    }

    private MockHttpServletResponse send(String path, CurrentPerson person, Map<String, String> typed) throws Exception {
        MockHttpServletRequestBuilder call = post(path).with(csrf()).with(people.as(person));
        typed.forEach(call::param);
        return mvc.perform(call).andReturn().getResponse();
    }

    private String page(String path, CurrentPerson person) throws Exception {
        return mvc.perform(get(path).with(people.as(person))).andReturn().getResponse().getContentAsString().replaceAll("\\s+", " ");
    }

    private static String hidden(String page, String name) {
        String start = "name=\"" + name + "\" value=\"";
        int at = page.indexOf(start) + start.length();
        assertThat(page).contains(start);
        return page.substring(at, page.indexOf('"', at));
    }

    private static Map<String, String> with(Map<String, String> typed, String field, String text) {
        Map<String, String> all = new LinkedHashMap<>(typed);
        all.put(field, text);
        return all;
    }
}
