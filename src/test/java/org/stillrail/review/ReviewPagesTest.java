package org.stillrail.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
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
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankState;
import org.stillrail.bank.Banks;
import org.stillrail.document.Sha256;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.support.AppTest;
import org.stillrail.support.SettingsBench;
import org.stillrail.support.TestPeople;

/** A revision's way through review, as the pages and direct calls of them go. */
@AppTest
class ReviewPagesTest {

    @Autowired
    private ApplicationContext context;
    @Autowired
    private MockMvc mvc;
    @Autowired
    private TestPeople people;
    @Autowired
    private Banks banks;
    @Autowired
    private Snapshots snapshots;
    @Autowired
    private JdbcClient jdbc;

    private CurrentPerson engineer;
    private CurrentPerson reviewer;
    /** Engineer and reviewer in one, a member of the project. */
    private CurrentPerson lead;
    private ReviewBench bench;

    @BeforeEach
    void bench() {
        engineer = people.another(Role.ENGINEER);
        reviewer = people.another(Role.REVIEWER);
        lead = people.with(Role.ENGINEER, Role.REVIEWER);
        bench = new ReviewBench(context, engineer, lead);
    }

    @Test
    void returnedThenMendedInANewRevisionThenApproved() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, engineer).andExpect(status().is3xxRedirection());
        page(bank, 1, reviewer).andExpect(content().string(containsString("Sign and approve")));
        step(bank, 1, "return", reviewer, "returnRemark", "Mind the corner of the board.").andExpect(status().is3xxRedirection());
        assertThat(state(bank, 1)).isEqualTo(BankState.RETURNED);
        page(bank, 1, engineer).andExpect(content().string(containsString("Mind the corner of the board.")));
        waiting(engineer).andExpect(content().string(containsString("Mind the corner of the board.")));

        bench.revise(bank, ReviewBench.ENOUGH, engineer);
        submit(bank, 2, engineer).andExpect(status().is3xxRedirection());
        waiting(engineer).andExpect(content().string(not(containsString("Mind the corner of the board."))));
        waiting(reviewer).andExpect(content().string(containsString(bank.name())));
        approve(bank, 2, reviewer).andExpect(status().is3xxRedirection());

        assertThat(state(bank, 1)).isEqualTo(BankState.RETURNED);
        assertThat(state(bank, 2)).isEqualTo(BankState.APPROVED);
        Snapshot snapshot = snapshot(bank, 2);
        assertThat(snapshots.signatures(snapshot.id())).singleElement().satisfies(signature -> {
            assertThat(signature.signer()).isEqualTo(reviewer.displayName());
            assertThat(signature.meaning()).isEqualTo(Signature.MEANING);
            assertThat(signature.isFor(snapshot)).isTrue();
            assertThat(signature.intact()).isTrue();
        });
        assertThat(actions(bank)).containsSubsequence("bank submitted", "bank returned", "bank submitted", "bank approved");
    }

    /** Who signs sees what the snapshot holds, and who comes later what was signed. */
    @Test
    void aSubmittedBankShowsWhatWasSubmittedWhateverTheSettingsSayByNow() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, engineer).andExpect(status().is3xxRedirection());
        double before = shown(page(bank, 1, reviewer)).input().settings().largestSensitivityPeak();
        SettingsBench settings = new SettingsBench(context, people.with(Role.ADMINISTRATOR));
        settings.changePeak(before + 1);
        try {
            assertThat(shown(page(bank, 1, reviewer).andExpect(content().string(containsString("what was frozen when this revision was submitted"))))
                    .input().settings().largestSensitivityPeak()).isEqualTo(before);
            Bank later = bench.revise(bank, ReviewBench.ENOUGH, engineer);
            assertThat(shown(page(later, 2, reviewer)).input().settings().largestSensitivityPeak()).isEqualTo(before + 1);
        } finally {
            settings.putBack();
        }
    }

    private static Evaluation shown(ResultActions page) {
        return (Evaluation) page.andReturn().getModelAndView().getModel().get("evaluation");
    }

    @Test
    void theAuthorSeesNoButtonAndADirectPostChangesNothing() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        bench.revise(bank, ReviewBench.ENOUGH, lead);
        submit(bank, 2, engineer).andExpect(status().is3xxRedirection());

        page(bank, 2, lead)
                .andExpect(content().string(not(containsString("Sign and approve"))))
                .andExpect(content().string(not(containsString("Return for changes"))))
                .andExpect(content().string(containsString("You wrote this revision; somebody else has to approve it.")));
        approve(bank, 2, lead).andExpect(status().isForbidden())
                .andExpect(status().reason(containsString("You wrote this revision; somebody else has to approve it.")));
        step(bank, 2, "return", lead, "returnRemark", "No").andExpect(status().isForbidden());

        assertThat(state(bank, 2)).isEqualTo(BankState.IN_REVIEW);
        assertThat(snapshots.signatures(snapshot(bank, 2).id())).isEmpty();
        assertThat(jdbc.sql("select count(*) from audit_event where actor = :who and action = 'refused' and subject_id = :path")
                .param("who", lead.userName()).param("path", path(bank, 2) + "/approve").query(Integer.class).single()).isEqualTo(1);
    }

    @Test
    void whoeverEditedSinceTheLastApprovalCannotApprove() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        bench.revise(bank, ReviewBench.ENOUGH, lead);
        bench.revise(bank, ReviewBench.ENOUGH, engineer);
        submit(bank, 3, engineer);
        approve(bank, 3, lead).andExpect(status().isForbidden())
                .andExpect(status().reason(containsString("You wrote revision 2, on which this one builds")));
        assertThat(state(bank, 3)).isEqualTo(BankState.IN_REVIEW);

        approve(bank, 3, reviewer).andExpect(status().is3xxRedirection());
        bench.revise(bank, ReviewBench.ENOUGH, engineer);
        submit(bank, 4, engineer);
        approve(bank, 4, lead).andExpect(status().is3xxRedirection());
        assertThat(state(bank, 4)).isEqualTo(BankState.APPROVED);
    }

    @Test
    void whoeverSubmittedCannotApprove() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, lead).andExpect(status().is3xxRedirection());
        approve(bank, 1, lead).andExpect(status().isForbidden()).andExpect(status().reason(containsString("You submitted this revision")));
        assertThat(state(bank, 1)).isEqualTo(BankState.IN_REVIEW);
    }

    @Test
    void aNewerApprovalSupersedesTheOlderAndWhatWaitedBesideIt() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, engineer);
        approve(bank, 1, reviewer);
        bench.revise(bank, ReviewBench.ENOUGH, engineer);
        submit(bank, 2, engineer);
        bench.revise(bank, ReviewBench.ENOUGH, engineer);
        submit(bank, 3, engineer);
        approve(bank, 3, reviewer).andExpect(status().is3xxRedirection());

        assertThat(state(bank, 1)).isEqualTo(BankState.SUPERSEDED);
        assertThat(state(bank, 2)).isEqualTo(BankState.SUPERSEDED);
        assertThat(state(bank, 3)).isEqualTo(BankState.APPROVED);
        approve(bank, 2, reviewer).andExpect(status().isConflict());
    }

    @Test
    void recalledWithAReasonByAReviewerWhoDidNotWriteIt() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        bench.revise(bank, ReviewBench.ENOUGH, lead);
        submit(bank, 2, engineer);
        approve(bank, 2, reviewer);
        step(bank, 2, "recall", lead, "recallReason", "Mine").andExpect(status().isForbidden());
        step(bank, 2, "recall", engineer, "recallReason", "Role").andExpect(status().isForbidden());
        step(bank, 2, "recall", reviewer, "recallReason", " ").andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("The reason is missing")));
        assertThat(state(bank, 2)).isEqualTo(BankState.APPROVED);

        step(bank, 2, "recall", reviewer, "recallReason", "Two failed short.").andExpect(status().is3xxRedirection());
        assertThat(state(bank, 2)).isEqualTo(BankState.RECALLED);
        page(bank, 2, engineer).andExpect(content().string(containsString("Two failed short.")));
    }

    @Test
    void aWrongStepIsSaidInWordsAndChangesNothing() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        approve(bank, 1, reviewer, "0".repeat(64), TestPeople.PASSWORD).andExpect(status().isConflict())
                .andExpect(status().reason(containsString("is in work; only a revision that is in review can be approved")));
        step(bank, 1, "recall", reviewer, "recallReason", "Why").andExpect(status().isConflict());
        submit(bank, 1, engineer);
        submit(bank, 1, engineer).andExpect(status().isConflict());
        assertThat(state(bank, 1)).isEqualTo(BankState.IN_REVIEW);
    }

    @Test
    void signingAsksForTheRightPassword() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, engineer);
        String sha256 = snapshot(bank, 1).sha256();
        approve(bank, 1, reviewer, sha256, "not the password").andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("This is not your password")))
                .andExpect(content().string(containsString("Looks good to me.")))
                .andExpect(content().string(not(containsString("not the password\""))));
        approve(bank, 1, reviewer, sha256, "").andExpect(status().isUnprocessableContent());
        assertThat(state(bank, 1)).isEqualTo(BankState.IN_REVIEW);
        approve(bank, 1, reviewer, sha256, TestPeople.PASSWORD).andExpect(status().is3xxRedirection());
    }

    @Test
    void passwordsCannotBeFoundByTryingToSign() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, engineer);
        String sha256 = snapshot(bank, 1).sha256();
        for (int attempt = 0; attempt < 5; attempt++) {
            approve(bank, 1, reviewer, sha256, "wrong " + attempt).andExpect(status().isUnprocessableContent());
        }
        approve(bank, 1, reviewer, sha256, TestPeople.PASSWORD).andExpect(status().isUnprocessableContent());
        assertThat(state(bank, 1)).isEqualTo(BankState.IN_REVIEW);
    }

    @Test
    void onlyWhatWasShownIsSigned() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, engineer);
        approve(bank, 1, reviewer, Sha256.of("another"), TestPeople.PASSWORD).andExpect(status().isConflict());
        assertThat(state(bank, 1)).isEqualTo(BankState.IN_REVIEW);

        tamper(snapshot(bank, 1));
        approve(bank, 1, reviewer).andExpect(status().isConflict()).andExpect(status().reason(containsString("Nothing was signed")));
        assertThat(state(bank, 1)).isEqualTo(BankState.IN_REVIEW);
    }

    @Test
    void anApprovalThatFailsInTheMiddleLeavesNothing() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, engineer);
        approve(bank, 1, reviewer);
        bench.revise(bank, ReviewBench.ENOUGH, engineer);
        submit(bank, 2, engineer);
        int lines = actions(bank).size();

        // A number that the record has already is what the database refuses, after all else has been written.
        jdbc.sql("update audit_head set sequence_number = sequence_number - 1").update();
        try {
            assertThatThrownBy(() -> approve(bank, 2, reviewer)).rootCause().isInstanceOf(SQLException.class);
        } finally {
            jdbc.sql("update audit_head set sequence_number = sequence_number + 1").update();
        }

        assertThat(state(bank, 1)).isEqualTo(BankState.APPROVED);
        assertThat(state(bank, 2)).isEqualTo(BankState.IN_REVIEW);
        assertThat(snapshots.signatures(snapshot(bank, 2).id())).isEmpty();
        assertThat(actions(bank)).hasSize(lines);
        assertThat(jdbc.sql("select count(*) from review_step where revision_id = :id and step <> 'SUBMITTED'")
                .param("id", banks.require(bank.id(), 2).revision().id()).query(Integer.class).single()).isZero();
    }

    @Test
    void aVerdictThatIsNotMetNeedsAConcessionAndWhatWasTypedIsKept() throws Exception {
        Bank bank = bench.bank(ReviewBench.TOO_FEW);
        page(bank, 1, engineer).andExpect(content().string(containsString("concede-ripple-reason")));
        submit(bank, 1, engineer, "submitRemark", "Typed with care").andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Ripple is not met: a concession with a reason, an owner and an end is needed")))
                .andExpect(content().string(containsString("Typed with care")));
        submit(bank, 1, engineer, "concede-ripple-reason", "The load filters it", "concede-ripple-owner", reviewer.id().toString(),
                "concede-ripple-end", "yesterday").andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("The load filters it")))
                .andExpect(content().string(containsString("is not a day")));
        submit(bank, 1, engineer, "concede-ripple-reason", "The load filters it", "concede-ripple-owner", reviewer.id().toString(),
                "concede-ripple-end", "2099-01-01").andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("The owner must be a member of the project")));
        assertThat(state(bank, 1)).isEqualTo(BankState.IN_WORK);

        String soon = LocalDate.now().plusDays(20).toString();
        submit(bank, 1, engineer, "concede-ripple-reason", "The load filters it", "concede-ripple-owner", lead.id().toString(),
                "concede-ripple-end", soon, "concede-quiet-band-reason", "As for the ripple", "concede-quiet-band-owner",
                engineer.id().toString(), "concede-quiet-band-end", "2099-01-01").andExpect(status().is3xxRedirection());
        assertThat(state(bank, 1)).isEqualTo(BankState.IN_REVIEW);
        waiting(lead).andExpect(content().string(containsString("Ripple: The load filters it")));
        waiting(engineer).andExpect(content().string(not(containsString("As for the ripple"))));
        snapshotPage(bank, 1).andExpect(content().string(containsString("The load filters it")));
    }

    @Test
    void aMetVerdictCannotBeConceded() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, engineer, "concede-ripple-reason", "To be safe").andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("Ripple is met: there is nothing to concede.")));
        assertThat(state(bank, 1)).isEqualTo(BankState.IN_WORK);
    }

    @Test
    void onlyTheNewestRevisionJudgedByTheNewestRailIsSubmittedByAMember() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, people.another(Role.ENGINEER)).andExpect(status().isForbidden());
        bench.revise(bank, ReviewBench.ENOUGH, engineer);
        submit(bank, 1, engineer).andExpect(status().isConflict()).andExpect(status().reason(containsString("Revision 2 is newer")));

        bench.reviseRail();
        page(bank, 2, engineer).andExpect(content().string(containsString("This revision cannot be submitted. The rail has changed")));
        submit(bank, 2, engineer).andExpect(status().isConflict()).andExpect(status().reason(containsString("The rail has changed")));
        waiting(engineer).andExpect(content().string(containsString("In work, judged by an old rail")));

        bench.revise(bank, ReviewBench.ENOUGH, engineer);
        submit(bank, 3, engineer).andExpect(status().is3xxRedirection());
        bench.reviseRail();
        approve(bank, 3, reviewer).andExpect(status().isConflict()).andExpect(status().reason(containsString("The rail has changed")));
        step(bank, 3, "return", reviewer, "returnRemark", "Once more for the new rail").andExpect(status().is3xxRedirection());
    }

    @Test
    void aSnapshotIsGivenOutByteForByteAndComesOutTheSameWhenComputedAgain() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, engineer, "submitRemark", "<b>Please</b> look");
        approve(bank, 1, reviewer);
        Snapshot snapshot = snapshot(bank, 1);

        byte[] bytes = mvc.perform(get("/reviews/snapshots/{id}/content", snapshot.id()).with(people.as(Role.VIEWER)))
                .andExpect(status().isOk()).andReturn().getResponse().getContentAsByteArray();
        assertThat(Sha256.of(bytes)).isEqualTo(snapshot.sha256());
        snapshotPage(bank, 1)
                .andExpect(content().string(containsString("the stored bytes give it")))
                .andExpect(content().string(containsString("holds for these bytes")))
                .andExpect(content().string(containsString(Signature.MEANING)))
                .andExpect(content().string(containsString("&lt;b&gt;Please&lt;/b&gt; look")));
        recompute(snapshot).andExpect(content().string(containsString("Every figure and verdict comes out as stored")));
    }

    @Test
    void changedBytesAndOtherFiguresAreFound() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        submit(bank, 1, engineer);
        approve(bank, 1, reviewer);
        Snapshot snapshot = snapshot(bank, 1);
        tamper(snapshot);

        snapshotPage(bank, 1)
                .andExpect(content().string(containsString("they were changed")))
                .andExpect(content().string(containsString("does not hold")));
        recompute(snapshot).andExpect(content().string(containsString("These figures differ")))
                .andExpect(content().string(containsString("ripple value")));
    }

    @Test
    void everyoneWhoWorksWithBanksMayComment() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        step(bank, 1, "comments", people.with(Role.LIBRARIAN), "commentRemark", "This part is scarce.").andExpect(status().is3xxRedirection());
        step(bank, 1, "comments", people.with(Role.VIEWER), "commentRemark", "Hello").andExpect(status().isForbidden());
        step(bank, 1, "comments", engineer, "commentRemark", "").andExpect(status().isUnprocessableContent());
        page(bank, 1, engineer).andExpect(content().string(containsString("This part is scarce.")))
                .andExpect(content().string(not(containsString("Hello"))));
        assertThat(state(bank, 1)).isEqualTo(BankState.IN_WORK);
    }

    @Test
    void whatIsInReviewStandsGreyedForWhoeverMayNotSignIt() throws Exception {
        Bank bank = bench.bank(ReviewBench.ENOUGH);
        bench.revise(bank, ReviewBench.ENOUGH, lead);
        submit(bank, 2, engineer);
        String page = waiting(lead).andReturn().getResponse().getContentAsString();
        assertThat(page.substring(page.indexOf("In review, for somebody else"))).contains(bank.name())
                .contains("you wrote it, or a revision that it builds on");
    }

    private ResultActions submit(Bank bank, int number, CurrentPerson person, String... fields) throws Exception {
        return step(bank, number, "submit", person, fields);
    }

    private ResultActions approve(Bank bank, int number, CurrentPerson person) throws Exception {
        return approve(bank, number, person, snapshot(bank, number).sha256(), TestPeople.PASSWORD);
    }

    private ResultActions approve(Bank bank, int number, CurrentPerson person, String sha256, String password) throws Exception {
        return step(bank, number, "approve", person, "sha256", sha256, "password", password, "approveRemark", "Looks good to me.");
    }

    private ResultActions step(Bank bank, int number, String step, CurrentPerson person, String... fields) throws Exception {
        MockHttpServletRequestBuilder call = post(path(bank, number) + "/" + step).with(people.as(person)).with(csrf());
        for (int i = 0; i < fields.length; i += 2) {
            call.param(fields[i], fields[i + 1]);
        }
        return mvc.perform(call);
    }

    private static String path(Bank bank, int number) {
        return "/banks/" + bank.id() + "/revisions/" + number;
    }

    private ResultActions page(Bank bank, int number, CurrentPerson person) throws Exception {
        return mvc.perform(get(path(bank, number)).with(people.as(person))).andExpect(status().isOk());
    }

    private ResultActions snapshotPage(Bank bank, int number) throws Exception {
        return mvc.perform(get("/reviews/snapshots/{id}", snapshot(bank, number).id()).with(people.as(Role.VIEWER))).andExpect(status().isOk());
    }

    private ResultActions recompute(Snapshot snapshot) throws Exception {
        return mvc.perform(post("/reviews/snapshots/{id}/recompute", snapshot.id()).with(people.as(Role.VIEWER)).with(csrf()))
                .andExpect(status().isOk());
    }

    private ResultActions waiting(CurrentPerson person) throws Exception {
        return mvc.perform(get("/waiting").with(people.as(person))).andExpect(status().isOk());
    }

    private BankState state(Bank bank, int number) {
        return banks.require(bank.id(), number).state();
    }

    private Snapshot snapshot(Bank bank, int number) {
        UUID revisionId = banks.require(bank.id(), number).revision().id();
        return snapshots.ofRevision(revisionId).orElseThrow();
    }

    /** As someone who may do anything to the database: the first part count of the input becomes another. */
    private void tamper(Snapshot snapshot) {
        String content = new String(snapshot.content().copy(), StandardCharsets.UTF_8);
        String changed = content.replaceFirst("\"count\":4", "\"count\":3");
        assertThat(changed).isNotEqualTo(content);
        jdbc.sql("update review_snapshot set content = :content where id = :id")
                .param("content", changed.getBytes(StandardCharsets.UTF_8)).param("id", snapshot.id()).update();
    }

    private List<String> actions(Bank bank) {
        return jdbc.sql("select action from audit_event where subject_id = :id order by sequence_number")
                .param("id", bank.id().toString()).query(String.class).list();
    }
}
