package org.stillrail.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.stillrail.support.TestClock;
import org.stillrail.support.TestDatabase;

/** The trail and its chain, on either engine. */
abstract class AuditTrailSuite {

    private final TestDatabase database;
    private final AuditEvents events;
    private final AuditTrail trail;
    private final AuditChain chain;

    AuditTrailSuite(TestDatabase fresh) {
        database = fresh;
        events = new AuditEvents(fresh.jdbc());
        trail = new AuditTrail(events, new TestClock());
        chain = new AuditChain(events);
    }

    @AfterEach
    void close() {
        database.close();
    }

    private void record(String actor, String subjectId, Map<String, ?> detail) {
        database.transaction().executeWithoutResult(status -> trail.record(actor, "tried", "thing", subjectId, detail));
    }

    @Test
    void anEmptyTrailIsSound() {
        assertThat(chain.verify()).isEqualTo(new AuditChain.Check(0, AuditEvent.ORIGIN, Optional.empty()));
    }

    @Test
    void linesComeBackAsTheyWereWritten() {
        record("ada", "7", Map.of("b", 2, "a", "\u03a9 \u2264 \ud83d\ude42"));
        AuditEvent line = events.after(0, 10).get(0);
        assertThat(line.actor()).isEqualTo("ada");
        assertThat(line.detail()).isEqualTo("{\"a\":\"\u03a9 \u2264 \ud83d\ude42\",\"b\":2}");
        assertThat(line.happenedAt()).isEqualTo(new TestClock().instant());
        assertThat(line.hash()).isEqualTo(line.expectedHash());
    }

    @Test
    void textThatADatabaseCannotKeepIsReplacedBeforeItIsHashed() {
        record("nul\0name", "half \ud83d pair", Map.of("nul", "\0", "half", "\udc00"));
        assertThat(events.after(0, 1).get(0).actor()).isEqualTo("nul\ufffdname");
        assertThat(chain.verify().sound()).isTrue();
    }

    @Test
    void eightWritersKeepOneChain() throws Exception {
        ExecutorService writers = Executors.newFixedThreadPool(8);
        try {
            List<Future<?>> done = new ArrayList<>();
            for (int writer = 0; writer < 8; writer++) {
                String name = "writer-" + writer;
                done.add(writers.submit(() -> {
                    for (int line = 0; line < 20; line++) {
                        record(name, Integer.toString(line), Map.of());
                    }
                }));
            }
            for (Future<?> writer : done) {
                writer.get();
            }
        } finally {
            writers.shutdown();
        }
        assertThat(chain.verify().lines()).isEqualTo(160);
        assertThat(chain.verify().sound()).isTrue();
    }

    @Test
    void aRolledBackChangeLeavesNoLine() {
        database.transaction().executeWithoutResult(status -> {
            trail.record("ada", "tried", "thing", "1", Map.of());
            status.setRollbackOnly();
        });
        assertThat(events.head().sequenceNumber()).isZero();
        assertThat(chain.verify().sound()).isTrue();
    }

    @Test
    void aChangedLineIsFound() {
        writeThreeLines();
        tamper("update audit_event set detail = '{\"passed\":true}' where sequence_number = 2");
        assertBrokenAt(2, 1, "not as it was written");
    }

    @Test
    void aChangedTimeIsFound() {
        writeThreeLines();
        tamper("update audit_event set happened_at = timestamp with time zone '2031-01-01 00:00:00+00' where sequence_number = 3");
        assertBrokenAt(3, 2, "not as it was written");
    }

    @Test
    void aRemovedLineIsFound() {
        writeThreeLines();
        tamper("delete from audit_event where sequence_number = 2");
        assertBrokenAt(2, 1, "missing");
    }

    @Test
    void aRemovedLastLineIsFound() {
        writeThreeLines();
        tamper("delete from audit_event where sequence_number = 3");
        assertBrokenAt(3, 2, "newest line");
    }

    @Test
    void aLineRewrittenWithItsOwnHashIsFoundAtTheNext() {
        writeThreeLines();
        AuditEvent line = events.after(1, 1).get(0);
        AuditEvent forged = AuditEvent.after(
                1, line.previousHash(), line.happenedAt(), "someone else", line.action(), line.subjectKind(), line.subjectId(),
                line.detail());
        tamper("update audit_event set actor = 'someone else', hash = '" + forged.hash() + "' where sequence_number = 2");
        assertBrokenAt(3, 2, "does not follow");
    }

    @Test
    void pagesGoBackFromTheNewest() {
        writeThreeLines();
        assertThat(events.before(Long.MAX_VALUE, 2)).extracting(AuditEvent::sequenceNumber).containsExactly(3L, 2L);
        assertThat(events.before(2, 2)).extracting(AuditEvent::sequenceNumber).containsExactly(1L);
    }

    @Test
    void postgresItselfRefusesToChangeALine() {
        assumeTrue(database.isPostgres(), "H2 has no triggers in SQL");
        writeThreeLines();
        for (String change : List.of("update audit_event set actor = 'x'", "delete from audit_event", "truncate audit_event")) {
            assertThatThrownBy(() -> database.jdbc().sql(change).update()).rootCause().hasMessageContaining("append-only");
        }
        assertThat(chain.verify().sound()).isTrue();
    }

    private void writeThreeLines() {
        for (String id : List.of("1", "2", "3")) {
            record("ada", id, Map.of("passed", false));
        }
    }

    /** As someone who may do anything to the database. */
    private void tamper(String sql) {
        if (database.isPostgres()) {
            database.jdbc().sql("alter table audit_event disable trigger all").update();
        }
        assertThat(database.jdbc().sql(sql).update()).isEqualTo(1);
    }

    private void assertBrokenAt(long number, long soundLines, String reason) {
        AuditChain.Check check = chain.verify();
        assertThat(check.lines()).isEqualTo(soundLines);
        assertThat(check.broken()).hasValueSatisfying(found -> {
            assertThat(found.sequenceNumber()).isEqualTo(number);
            assertThat(found.reason()).contains(reason);
        });
    }
}
