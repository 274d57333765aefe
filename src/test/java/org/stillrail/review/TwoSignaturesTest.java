package org.stillrail.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankDocument;
import org.stillrail.bank.BankState;
import org.stillrail.bank.Banks;
import org.stillrail.bank.BranchDocument;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.support.AppTest;
import org.stillrail.support.TeamBench;
import org.stillrail.support.TestPeople;

@AppTest
class TwoSignaturesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestPeople people;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Banks banks;

    @Autowired
    private Snapshots snapshots;

    @Autowired
    private ReviewRows rows;

    @Autowired
    private InstallationCheck check;

    @Autowired
    private JdbcClient jdbc;

    private ResultActions engineer(String path, String... fieldAndValue) throws Exception {
        var call = post(path).with(people.as(Role.ENGINEER)).with(csrf());
        for (int i = 0; i < fieldAndValue.length; i += 2) {
            call.param(fieldAndValue[i], fieldAndValue[i + 1]);
        }
        return mvc.perform(call);
    }

    private ResultActions sign(Bank bank, CurrentPerson reviewer) throws Exception {
        String sha256 = snapshots.ofRevision(bank.revision().id()).orElseThrow().sha256();
        return mvc.perform(post("/banks/" + bank.id() + "/revisions/" + bank.revision().number() + "/approve").param("sha256", sha256)
                .param("password", TestPeople.PASSWORD).with(people.as(reviewer)).with(csrf()));
    }

    private Bank submitted(TeamBench bench) throws Exception {
        Bank bank = bench.addBank(4);
        engineer("/banks/" + bank.id() + "/revisions/1/submit").andExpect(status().is3xxRedirection());
        return bank;
    }

    @Test
    void whereTwoAreAskedOneSignatureDoesNotApproveAndNobodySignsTwice() throws Exception {
        TeamBench bench = new TeamBench(context, people.with(Role.ENGINEER));
        engineer("/projects/" + bench.project().id() + "/signatures", "version", "0", "signatures", "2").andExpect(status().is3xxRedirection());
        Bank bank = submitted(bench);
        CurrentPerson first = people.another(Role.REVIEWER);
        assertThat(page(bank, first)).contains("this is the first, and the second one approves", "Sign as the first");
        sign(bank, first).andExpect(status().is3xxRedirection());
        assertThat(page(bank, people.another(Role.REVIEWER))).contains("Sign and approve").doesNotContain("this is the first");
        assertThat(banks.require(bank.id()).state()).isEqualTo(BankState.IN_REVIEW);
        sign(bank, first).andExpect(status().isForbidden());
        mvc.perform(get("/waiting").with(people.as(first))).andExpect(content().string(containsString("you signed it; it waits for the second signature")));
        sign(bank, people.another(Role.REVIEWER)).andExpect(status().is3xxRedirection());
        assertThat(banks.require(bank.id()).state()).isEqualTo(BankState.APPROVED);
        assertThat(snapshots.signatures(snapshots.ofRevision(bank.revision().id()).orElseThrow().id())).hasSize(2);
        String page = page(bank, first);
        assertThat(page).contains("signed revision 1; it waits for the second signature: &#39;" + Signature.MEANING + "&#39;<",
                "approved and signed revision 1: &#39;" + Signature.MEANING + "&#39;<");
        String block = page.substring(page.indexOf("Signatures under revision 1"));
        block = block.substring(0, block.indexOf("</div>"));
        assertThat(block).contains("<strong>" + first.displayName() + "</strong>", " UTC</span>", "<p>" + Signature.MEANING + "</p>",
                snapshots.ofRevision(bank.revision().id()).orElseThrow().sha256());
        assertThat(block.split("holds for these bytes", -1)).hasSize(3);
    }

    @Test
    void aCommentStaysTiedToWhatItWasSaidOf() throws Exception {
        TeamBench bench = new TeamBench(context, people.with(Role.ENGINEER));
        Bank bank = bench.addBank(4);
        comment(bank, "Why four?", "card-0").andExpect(status().is3xxRedirection());
        comment(bank, "?", "card-1").andExpect(status().isUnprocessableContent());
        bench.revise(bank, 5);
        mvc.perform(get("/banks/" + bank.id()).with(people.as(Role.VIEWER)))
                .andExpect(content().string(allOf(containsString("said of branch 1 &#39;bulk&#39; in revision 1:"),
                        containsString("href=\"/banks/" + bank.id() + "/revisions/1#card-0\""), not(containsString("1 comment on ")))));
        mvc.perform(get("/banks/" + bank.id() + "/revisions/2/differences").with(people.as(Role.REVIEWER))).andExpect(status().isOk())
                .andExpect(content().string(allOf(containsString("was 4 \u00d7 TEAM-"), containsString("and is 5 \u00d7 TEAM-"), containsString("Ripple"))));
    }

    @Test
    void branchesOfOneNameAreToldApartAndOnlyVerdictsThatAreAskedForAreOffered() throws Exception {
        CurrentPerson author = people.with(Role.ENGINEER);
        TeamBench bench = new TeamBench(context, author);
        BankDocument one = bench.addBank(2).document();
        List<BranchDocument> twice = List.of(one.branches().get(0), one.branches().get(0));
        Bank bank = TeamBench.as(author, () -> banks.add(bench.rail().id(), "Twins " + bench.unique(),
                new BankDocument(one.railRevisionId(), null, twice, null), author));
        comment(bank, "This one is too far away", "card-1").andExpect(status().is3xxRedirection());
        comment(bank, "Nor is this", "card-1").andExpect(status().is3xxRedirection());
        comment(bank, "Close to the limit", "verdict-ripple").andExpect(status().is3xxRedirection());
        comment(bank, "Nobody asks", "verdict-life").andExpect(status().isUnprocessableContent());
        String page = mvc.perform(get("/banks/" + bank.id()).with(people.as(author))).andReturn().getResponse().getContentAsString();
        assertThat(page).contains("said of branch 2 &#39;bulk&#39; in revision 1:", "href=\"#card-1\"", "2 comments on branch 2 &#39;bulk&#39;",
                        "1 comment on the verdict on ripple", "<option value=\"card-0\">branch 1 &#39;bulk&#39;</option>")
                .doesNotContain("comments on branch 1", "value=\"verdict-life\"");
        assertThat(rows.commentsOfBank(bank.id())).extracting(Comment::subject).containsExactly(new CommentSubject(null, 1),
                new CommentSubject(null, 1), new CommentSubject(Requirement.RIPPLE, null));
    }

    private ResultActions comment(Bank bank, String remark, String about) throws Exception {
        return engineer("/banks/" + bank.id() + "/revisions/1/comments", "commentRemark", remark, "commentAbout", about);
    }

    @Test
    void anApprovedBankWhosePartWasRevisedWaitsForItsAuthor() throws Exception {
        CurrentPerson author = people.another(Role.ENGINEER);
        TeamBench bench = new TeamBench(context, author);
        Bank bank = bench.addBank(4);
        mvc.perform(post("/banks/" + bank.id() + "/revisions/1/submit").with(people.as(author)).with(csrf())).andExpect(status().is3xxRedirection());
        sign(bank, people.with(Role.REVIEWER)).andExpect(status().is3xxRedirection());
        mvc.perform(get("/waiting").with(people.as(author))).andExpect(content().string(containsString("Nothing waits for you")));
        bench.revisePart(0.006);
        mvc.perform(get("/waiting").with(people.as(author))).andExpect(content().string(allOf(
                containsString("Approved, but evidence changed"), containsString(bank.name()), containsString(bench.part().partNumber()))));
        assertThat(banks.require(bank.id()).state()).isEqualTo(BankState.APPROVED);
    }

    @Test
    void theCheckFindsASnapshotThatWasChangedPastTheApplication() throws Exception {
        Bank bank = submitted(new TeamBench(context, people.with(Role.ENGINEER)));
        sign(bank, people.with(Role.REVIEWER)).andExpect(status().is3xxRedirection());
        Snapshot snapshot = snapshots.ofRevision(bank.revision().id()).orElseThrow();
        assertThat(command("recompute", snapshot.id().toString())).startsWith("0 The snapshot gives");
        assertThat(check.run(false).faults()).noneMatch(fault -> fault.contains(snapshot.id().toString()));
        byte[] bytes = snapshot.content().copy();
        bytes[bytes.length / 2] ^= 1;
        write(snapshot.id(), bytes);
        try {
            assertThat(check.run(false).faults()).anyMatch(fault -> fault.contains(snapshot.id() + " does not give its SHA-256"));
            mvc.perform(get("/reviews/check").with(people.as(Role.VIEWER))).andExpect(content().string(containsString("not as it was written")));
            assertThat(command("recompute", snapshot.id().toString())).startsWith("1 ");
        } finally {
            write(snapshot.id(), snapshot.content().copy());
        }
        assertThat(command("recompute", UUID.randomUUID().toString())).startsWith("1 There is no snapshot");
        assertThat(command("anything", null)).startsWith("2 Commands:");
    }

    private void write(UUID snapshotId, byte[] bytes) {
        jdbc.sql("update review_snapshot set content = :content where id = :id").param("content", bytes).param("id", snapshotId).update();
    }

    private String command(String command, String snapshot) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int code = new VerifyCommand(context, check).run(command, snapshot, new PrintStream(out, true, StandardCharsets.UTF_8));
        return code + " " + out.toString(StandardCharsets.UTF_8);
    }

    private String page(Bank bank, CurrentPerson person) throws Exception {
        return mvc.perform(get("/banks/" + bank.id()).with(people.as(person))).andReturn().getResponse().getContentAsString();
    }
}
