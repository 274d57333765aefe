package org.stillrail.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.stillrail.support.TestClock;
import org.stillrail.support.TestDatabase;

/** What the records say of some subjects, on either engine. */
abstract class AuditLinesSuite {

    private final TestDatabase database;
    private final AuditTrail trail;
    private final AuditLines lines;

    AuditLinesSuite(TestDatabase fresh) {
        database = fresh;
        trail = new AuditTrail(new AuditEvents(fresh.jdbc()), new TestClock());
        lines = new AuditLines(fresh.jdbc());
    }

    @AfterEach
    void close() {
        database.close();
    }

    private void record(String action, String kind, String subjectId) {
        database.transaction().executeWithoutResult(status -> trail.record("ada", action, kind, subjectId, Map.of()));
    }

    private void came(String chain, String kind, String subjectId) {
        AuditEvent line = AuditEvent.after(6, AuditEvent.ORIGIN, new TestClock().instant(), "eva", "came", kind, subjectId, "{}");
        database.jdbc().sql("""
                        insert into origin_audit_event (chain, sequence_number, happened_at, actor, action, subject_kind, subject_id, detail, previous_hash, hash)
                        values (:chain, 7, current_timestamp, 'eva', 'came', :kind, :id, '{}', :previous, :hash)""")
                .param("chain", chain).param("kind", kind).param("id", subjectId).param("previous", line.previousHash()).param("hash", line.hash()).update();
    }

    private static List<String> actions(List<AuditEvent> events) {
        return events.stream().map(AuditEvent::action).toList();
    }

    @Test
    void anEmptyRecordIsASourceWithNoLine() {
        assertThat(lines.sources(List.of("x"))).containsExactly(new AuditLines.Source(AuditEvent.ORIGIN, 0, true));
    }

    @Test
    void linesAboutTheSubjectsComeNewestFirstAndByThePage() {
        String one = UUID.randomUUID().toString();
        String two = UUID.randomUUID().toString();
        record("first", "rail", one);
        record("other", "rail", UUID.randomUUID().toString());
        record("second", "bank", two);
        record("third", "rail", one);
        List<String> both = List.of(one, two);
        AuditLines.Source own = lines.sources(both).get(0);
        assertThat(own).isEqualTo(new AuditLines.Source(lines.ownChain(), 3, true));
        assertThat(actions(lines.about(both, own, 0, 2))).containsExactly("third", "second");
        assertThat(actions(lines.about(both, own, 2, 2))).containsExactly("first");
        assertThat(actions(lines.about(List.of(one), own, 0, 10))).containsExactly("third", "first");
        assertThat(lines.about(both, own, 0, 10)).allMatch(AuditEvent::intact);
    }

    @Test
    void aRefusedRequestIsAboutTheIdInItsPath() {
        String id = UUID.randomUUID().toString();
        for (String path : List.of("/banks/", "/rails/", "/projects/", "/library/parts/", "/library/sweeps/")) {
            record(path, "request", path + id);
            record(path + " below", "request", path + id + "/edit");
            record("another", "request", path + UUID.randomUUID());
        }
        record("elsewhere", "request", "/people/" + id);
        AuditLines.Source own = lines.sources(List.of(id)).get(0);
        assertThat(own.lines()).isEqualTo(10);
        assertThat(actions(lines.about(List.of(id), own, 0, 50))).contains("/banks/", "/library/sweeps/ below").doesNotContain("another", "elsewhere");
    }

    @Test
    void linesFromElsewhereStayByTheirChain() {
        String id = UUID.randomUUID().toString();
        record("here", "rail", id);
        came("a", "rail", id);
        came("b", "request", "/rails/" + id + "/edit");
        came("c", "rail", "something else");
        assertThat(lines.sources(List.of(id))).extracting(AuditLines.Source::chain).containsExactly(lines.ownChain(), "a", "b");
        AuditLines.Source a = lines.sources(List.of(id)).get(1);
        assertThat(a.own()).isFalse();
        assertThat(lines.about(List.of(id), a, 0, 10)).singleElement().matches(line -> line.sequenceNumber() == 7);
        assertThat(database.jdbc().sql("select count(*) from audit_line where " + AuditLines.ABOUT).param("subjects", List.of(id)).query(Integer.class).single())
                .isEqualTo(3);
    }

    @Test
    void aSubjectMayBeLongerThanAnIndexTakes() {
        StringBuilder name = new StringBuilder();
        while (name.length() < 20_000) {
            name.append(UUID.randomUUID());
        }
        came("a", "thing", name.toString());
        assertThat(lines.originLines()).isEqualTo(1);
    }
}
