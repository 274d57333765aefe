package org.stillrail.review;

import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankState;

/** What the stored revisions of a bank say of who worked on it and which of them was approved. */
@Repository
class ReviewedRevisions {

    private final JdbcClient jdbc;

    ReviewedRevisions(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * What a person has in a revision that its review judges: they wrote it, or submitted it, or wrote one of the revisions
     * between it and the one approved before it, which nobody else has judged.
     */
    Optional<String> ownPart(Bank bank, UUID personId) {
        int number = bank.revision().number();
        int approvedBefore = jdbc.sql("""
                        select coalesce(max(r.number), 0) from bank_revision r
                        join bank_revision_state s on s.revision_id = r.id and s.state <> :recalled
                        join review_step t on t.revision_id = r.id and t.step = :approved
                        where r.subject_id = :bankId and r.number < :number""")
                .param("recalled", BankState.RECALLED.name())
                .param("approved", ReviewStep.APPROVED.name())
                .param("bankId", bank.id())
                .param("number", number)
                .query(Integer.class)
                .single();
        Optional<Integer> written = jdbc.sql("""
                        select max(number) from bank_revision
                        where subject_id = :bankId and number > :after and number <= :number and author_id = :personId""")
                .param("bankId", bank.id())
                .param("after", approvedBefore)
                .param("number", number)
                .param("personId", personId)
                .query(Integer.class)
                .optional();
        if (written.isPresent()) {
            return Optional.of(written.get() == number ? "You wrote this revision"
                    : "You wrote revision " + written.get() + ", on which this one builds and which nobody has approved");
        }
        boolean submitted = jdbc.sql("select count(*) from review_step where revision_id = :id and step = :step and person_id = :personId")
                .param("id", bank.revision().id())
                .param("step", ReviewStep.SUBMITTED.name())
                .param("personId", personId)
                .query(Integer.class)
                .single() > 0;
        return submitted ? Optional.of("You submitted this revision") : Optional.empty();
    }

    boolean signedBy(UUID revisionId, UUID personId) {
        return jdbc.sql("""
                        select count(*) from review_signature g join review_snapshot s on s.id = g.snapshot_id
                        where s.revision_id = :revisionId and g.signer_id = :personId""")
                .param("revisionId", revisionId)
                .param("personId", personId)
                .query(Integer.class)
                .single() > 0;
    }

    Optional<Integer> newestApproved(UUID bankId) {
        return jdbc.sql("""
                        select max(r.number) from bank_revision r join bank_revision_state s on s.revision_id = r.id
                        where r.subject_id = :bankId and s.state = :approved""")
                .param("bankId", bankId)
                .param("approved", BankState.APPROVED.name())
                .query(Integer.class)
                .optional();
    }
}
