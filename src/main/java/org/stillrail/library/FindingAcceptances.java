package org.stillrail.library;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.account.CurrentPerson;
import org.stillrail.electrical.quality.Finding;
import org.stillrail.electrical.quality.FindingKind;

/** Stored acceptances of findings; inserted once, never changed. */
@Repository
class FindingAcceptances {

    private final JdbcClient jdbc;

    FindingAcceptances(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @return false where this kind was accepted before */
    boolean insert(UUID sweepId, Finding finding, String reason, CurrentPerson person, OffsetDateTime at) {
        return jdbc.sql("""
                        insert into finding_acceptance (id, sweep_id, kind, finding, reason, person_id, person, accepted_at)
                        values (:id, :sweepId, :kind, :finding, :reason, :personId, :person, :at) on conflict do nothing""")
                .param("id", UUID.randomUUID())
                .param("sweepId", sweepId)
                .param("kind", finding.kind().name())
                .param("finding", finding.text())
                .param("reason", reason)
                .param("personId", person.id())
                .param("person", person.displayName())
                .param("at", at)
                .update() == 1;
    }

    List<FindingAcceptance> ofSweep(UUID sweepId) {
        return jdbc.sql("select * from finding_acceptance where sweep_id = :sweepId order by accepted_at")
                .param("sweepId", sweepId)
                .query((row, index) -> new FindingAcceptance(
                        row.getObject("sweep_id", UUID.class), FindingKind.valueOf(row.getString("kind")), row.getString("finding"),
                        row.getString("reason"), row.getString("person"), row.getObject("accepted_at", OffsetDateTime.class)))
                .list();
    }
}
