package org.stillrail.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.stillrail.account.Accounts;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.audit.AuditChain;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankState;
import org.stillrail.bank.Banks;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.support.TestDatabase;
import org.stillrail.support.TestPeople;

/** An approval is one whole, also with two servers on one PostgreSQL of which one is killed in the middle. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class ApprovalOnPostgresTest {

    private static final String URL = TestDatabase.emptyPostgresUrl();
    private static final OffsetDateTime DAY = OffsetDateTime.of(2031, 3, 4, 5, 6, 7, 0, ZoneOffset.UTC);

    @Autowired
    private ApplicationContext context;
    @Autowired
    private Accounts accounts;
    @Autowired
    private Banks banks;
    @Autowired
    private Reviews reviews;
    @Autowired
    private ReviewWriter writer;
    @Autowired
    private Snapshots snapshots;
    @Autowired
    private AuditChain chain;
    @Autowired
    private JdbcClient jdbc;
    @TempDir
    private Path directory;

    private CurrentPerson reviewer;
    private Bank bank;

    @DynamicPropertySource
    static void database(DynamicPropertyRegistry registry) {
        registry.add("spring.datasource.url", () -> URL);
    }

    /** Revision 1 is approved, revision 2 waits. */
    @BeforeEach
    void bank() {
        CurrentPerson engineer = person(Role.ENGINEER);
        reviewer = person(Role.REVIEWER);
        ReviewBench bench = new ReviewBench(context, engineer);
        bank = bench.bank(ReviewBench.ENOUGH);
        Snapshot first = submit(1, engineer);
        writer.approve(first.revisionId(), first.sha256(), null, reviewer, DAY);
        bench.revise(bank, ReviewBench.ENOUGH, engineer);
        submit(2, engineer);
    }

    @ParameterizedTest
    @ValueSource(strings = {"insert into review_signature", "insert into audit_event", DyingServer.BEFORE_COMMIT})
    void killedBeforeTheCommitItLeavesNothingAndTheOtherGoesOn(String moment) throws Exception {
        killWhileApproving(moment);

        assertThat(state(1)).isEqualTo(BankState.APPROVED);
        assertThat(state(2)).isEqualTo(BankState.IN_REVIEW);
        assertThat(signatures(2)).isEmpty();
        assertThat(steps(2)).containsExactly("SUBMITTED");
        assertThat(approvalsInTheRecord()).isEqualTo(1);

        Snapshot second = snapshot(2);
        writer.approve(second.revisionId(), second.sha256(), null, reviewer, DAY);
        assertAllOfIt();
    }

    @ParameterizedTest
    @ValueSource(strings = DyingServer.AFTER_COMMIT)
    void killedAfterTheCommitAllOfItIsThere(String moment) throws Exception {
        killWhileApproving(moment);
        assertAllOfIt();
    }

    @Test
    void twoWhoSignAtOnceFollowOneAnother() throws Exception {
        Snapshot second = snapshot(2);
        CyclicBarrier together = new CyclicBarrier(2);
        List<CurrentPerson> signers = List.of(reviewer, person(Role.REVIEWER));
        ExecutorService threads = Executors.newFixedThreadPool(signers.size());
        List<Throwable> refused = new ArrayList<>();
        try {
            List<Future<Signature>> approvals = new ArrayList<>();
            for (CurrentPerson signer : signers) {
                approvals.add(threads.submit(() -> {
                    together.await();
                    return writer.approve(second.revisionId(), second.sha256(), null, signer, DAY);
                }));
            }
            for (Future<Signature> approval : approvals) {
                try {
                    approval.get();
                } catch (ExecutionException e) {
                    refused.add(e.getCause());
                }
            }
        } finally {
            threads.shutdown();
        }
        assertThat(refused).singleElement().isInstanceOf(WrongStepException.class).asString().contains("is approved");
        assertAllOfIt();
    }

    private void assertAllOfIt() {
        assertThat(state(1)).isEqualTo(BankState.SUPERSEDED);
        assertThat(state(2)).isEqualTo(BankState.APPROVED);
        assertThat(signatures(2)).singleElement().satisfies(signature -> assertThat(signature.isFor(snapshot(2))).isTrue());
        assertThat(steps(1)).containsExactly("SUBMITTED", "APPROVED", "SUPERSEDED");
        assertThat(steps(2)).containsExactly("SUBMITTED", "APPROVED");
        assertThat(approvalsInTheRecord()).isEqualTo(2);
        assertThat(chain.verify().sound()).isTrue();
    }

    private void killWhileApproving(String moment) throws Exception {
        Snapshot second = snapshot(2);
        File output = directory.resolve("output.txt").toFile();
        Process server = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1",
                "-cp", System.getProperty("java.class.path"), DyingServer.class.getName(),
                URL, second.revisionId().toString(), second.sha256(), reviewer.userName(), moment)
                .redirectErrorStream(true)
                .redirectOutput(output)
                .start();
        try {
            assertThat(server.waitFor(3, TimeUnit.MINUTES)).as("ended").isTrue();
            assertThat(server.exitValue()).as(() -> "output in " + output).isEqualTo(DyingServer.KILLED);
        } finally {
            server.destroyForcibly();
        }
        // The database notices the lost connection and takes back what was not committed; whoever waits for the bank sees that.
        ReviewBench.inTransaction(context, () -> banks.lock(second.revisionId()));
    }

    private CurrentPerson person(Role role) {
        return accounts.add("p-" + UUID.randomUUID().toString().substring(0, 13), "Test " + role, Set.of(role), TestPeople.PASSWORD, "tests");
    }

    private Snapshot submit(int number, CurrentPerson engineer) {
        Bank revision = banks.require(bank.id(), number);
        Evaluation evaluation = reviews.evaluate(revision);
        return writer.submit(revision.revision().id(), evaluation, List.of(), null, engineer, DAY);
    }

    private BankState state(int number) {
        return banks.require(bank.id(), number).state();
    }

    private Snapshot snapshot(int number) {
        return snapshots.ofRevision(banks.require(bank.id(), number).revision().id()).orElseThrow();
    }

    private List<Signature> signatures(int number) {
        return snapshots.signatures(snapshot(number).id());
    }

    private List<String> steps(int number) {
        return jdbc.sql("select step from review_step where revision_id = :id order by number")
                .param("id", banks.require(bank.id(), number).revision().id()).query(String.class).list();
    }

    private int approvalsInTheRecord() {
        return jdbc.sql("select count(*) from audit_event where action = 'bank approved' and subject_id = :id")
                .param("id", bank.id().toString()).query(Integer.class).single();
    }
}
