package org.stillrail.bank;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.account.CurrentPerson;
import org.stillrail.document.Revision;
import org.stillrail.document.RevisionTable;

/** Stored banks, their revisions and where each revision stands. */
@Repository
class BankRows {

    private final JdbcClient jdbc;
    private final RevisionTable<BankDocument> revisions;

    BankRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.revisions = new RevisionTable<>(jdbc, "bank_revision", BankDocument.class);
    }

    Optional<Bank> find(UUID id) {
        return revisions.latest(id).flatMap(this::withBank);
    }

    Optional<Bank> find(UUID id, int number) {
        return revisions.find(id, number).flatMap(this::withBank);
    }

    Optional<Bank> findRevision(UUID revisionId) {
        return revisions.find(revisionId).flatMap(this::withBank);
    }

    List<Revision<BankDocument>> history(UUID id) {
        return revisions.all(id);
    }

    List<Bank> ofRail(UUID railId) {
        return banks("b.rail_id = :id", railId);
    }

    List<Bank> scratchOf(UUID ownerId) {
        return banks("b.rail_id is null and b.owner_id = :id", ownerId);
    }

    Bank insert(UUID railId, String name, BankDocument document, CurrentPerson author, OffsetDateTime at) {
        UUID id = UUID.randomUUID();
        jdbc.sql("""
                        insert into bank (id, rail_id, owner_id, owner, name, latest_number, version)
                        values (:id, :railId, :ownerId, :owner, :name, 1, 0)""")
                .param("id", id)
                .param("railId", railId)
                .param("ownerId", author.id())
                .param("owner", author.displayName())
                .param("name", name)
                .update();
        insertRevision(id, 1, document, author, at);
        return find(id).orElseThrow();
    }

    /** The next revision, unless somebody else saved one since. */
    boolean addRevision(Bank bank, BankDocument document, CurrentPerson author, OffsetDateTime at) {
        int number = bank.latestNumber() + 1;
        int changed = jdbc.sql("update bank set latest_number = :number, version = version + 1 where id = :id and version = :version")
                .param("number", number)
                .param("id", bank.id())
                .param("version", bank.version())
                .update();
        if (changed == 0) {
            return false;
        }
        insertRevision(bank.id(), number, document, author, at);
        return true;
    }

    void lock(UUID bankId) {
        jdbc.sql("select version from bank where id = :id for update").param("id", bankId).query(Long.class).single();
    }

    /** False where the revision does not stand at {@code from} any more. */
    boolean changeState(UUID revisionId, BankState from, BankState to) {
        return jdbc.sql("""
                        update bank_revision_state set state = :to, version = version + 1
                        where revision_id = :revisionId and state = :from""")
                .param("revisionId", revisionId)
                .param("from", from.name())
                .param("to", to.name())
                .update() == 1;
    }

    /** Revisions of a bank that stand at a state, newest first. */
    List<Bank> revisionsAt(UUID bankId, BankState state) {
        return jdbc.sql("""
                        select r.id from bank_revision r join bank_revision_state s on s.revision_id = r.id
                        where r.subject_id = :bankId and s.state = :state order by r.number desc""")
                .param("bankId", bankId)
                .param("state", state.name())
                .query(UUID.class)
                .list()
                .stream()
                .map(id -> findRevision(id).orElseThrow())
                .toList();
    }

    private void insertRevision(UUID id, int number, BankDocument document, CurrentPerson author, OffsetDateTime at) {
        Revision<BankDocument> revision = revisions.insert(id, number, author.id(), author.displayName(), at, document,
                Collections.singletonMap("rail_revision_id", document.railRevisionId()));
        jdbc.sql("insert into bank_revision_state (revision_id, state, version) values (:id, :state, 0)")
                .param("id", revision.id())
                .param("state", BankState.IN_WORK.name())
                .update();
        document.branches().stream().flatMap(BranchDocument::parts).forEach(part -> jdbc.sql("""
                        insert into bank_part (revision_id, part_id, part_revision_id)
                        values (:revisionId, :partId, :partRevisionId) on conflict do nothing""")
                .params(Map.of("revisionId", revision.id(), "partId", part.partId(), "partRevisionId", part.partRevisionId()))
                .update());
    }

    /** Newest revisions, by name, in one query. */
    private List<Bank> banks(String condition, UUID id) {
        return jdbc.sql("""
                        select v.*, b.rail_id, b.owner_id, b.owner, b.name, b.latest_number, b.version, s.state from bank b
                        join bank_revision v on v.subject_id = b.id and v.number = b.latest_number
                        join bank_revision_state s on s.revision_id = v.id where\s""" + condition + " order by b.name")
                .param("id", id)
                .query((row, index) -> bank(revisions.map(row, index), row))
                .list();
    }

    private Optional<Bank> withBank(Revision<BankDocument> revision) {
        return jdbc.sql("""
                        select b.rail_id, b.owner_id, b.owner, b.name, b.latest_number, b.version, s.state
                        from bank b join bank_revision_state s on s.revision_id = :revisionId where b.id = :id""")
                .param("id", revision.subjectId())
                .param("revisionId", revision.id())
                .query((row, index) -> bank(revision, row))
                .optional();
    }

    private static Bank bank(Revision<BankDocument> revision, ResultSet row) throws SQLException {
        return new Bank(
                revision.subjectId(),
                row.getObject("rail_id", UUID.class),
                row.getObject("owner_id", UUID.class),
                row.getString("owner"),
                row.getString("name"),
                row.getInt("latest_number"),
                row.getLong("version"),
                revision,
                BankState.valueOf(row.getString("state")));
    }
}
