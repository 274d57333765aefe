package org.stillrail.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DuplicateKeyException;
import org.stillrail.bank.BankState;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.support.TestDatabase;

/** Snapshots, signatures, concessions and what waits for whom, as they are stored, on either engine. */
abstract class ReviewRowsSuite {

    private static final int MANY = 10_000;

    private final TestDatabase database;
    private final StoredBanks stored;
    private final ReviewRows rows;
    private final Snapshots snapshots;
    private final WaitingRows waiting;
    private final ReviewedRevisions revisions;

    ReviewRowsSuite(TestDatabase database) {
        this.database = database;
        this.stored = new StoredBanks(database.jdbc());
        this.rows = new ReviewRows(database.jdbc());
        this.snapshots = new Snapshots(database.jdbc());
        this.waiting = new WaitingRows(database.jdbc());
        this.revisions = new ReviewedRevisions(database.jdbc());
    }

    private UUID inReview(UUID author, UUID submitter) {
        UUID revision = stored.revision(stored.bank(author), author, BankState.IN_REVIEW);
        stored.step(revision, ReviewStep.SUBMITTED, submitter);
        return revision;
    }

    private String obstacle(UUID person, UUID revision) {
        UUID bank = database.jdbc().sql("select subject_id from bank_revision where id = :id").param("id", revision).query(UUID.class).single();
        int number = database.jdbc().sql("select number from bank_revision where id = :id").param("id", revision).query(Integer.class).single();
        return waiting.inReview(person, MANY).stream().filter(row -> row.bankId().equals(bank) && row.revision() == number)
                .findFirst().orElseThrow().reason();
    }

    @Test
    void aSnapshotComesBackByteForByteAndAChangedByteIsFound() {
        UUID author = stored.person();
        UUID revision = inReview(author, author);
        Snapshot snapshot = Snapshot.of(revision, "{\"\u03a9\":\"\u2264 \\u0000\"}".getBytes(StandardCharsets.UTF_8), 1, StoredBanks.MADE);
        snapshots.insert(snapshot);

        Snapshot found = snapshots.ofRevision(revision).orElseThrow();
        assertThat(found.content().copy()).isEqualTo(snapshot.content().copy());
        assertThat(found.sha256()).isEqualTo(snapshot.sha256());
        assertThat(found.intact()).isTrue();
        assertThat(snapshots.find(snapshot.id())).map(Snapshot::revisionId).contains(revision);

        byte[] changed = snapshot.content().copy();
        changed[2] ^= 1;
        tamper("review_snapshot", "update review_snapshot set content = ? where id = ?", changed, snapshot.id());
        assertThat(snapshots.find(snapshot.id()).orElseThrow().intact()).isFalse();
    }

    @Test
    void aRevisionHasOneSnapshot() {
        UUID author = stored.person();
        UUID revision = inReview(author, author);
        snapshots.insert(Snapshot.of(revision, new byte[] {1}, 1, StoredBanks.MADE));
        assertThatThrownBy(() -> snapshots.insert(Snapshot.of(revision, new byte[] {2}, 1, StoredBanks.MADE)))
                .isInstanceOf(DuplicateKeyException.class);
    }

    @Test
    void aSignatureThatWasChangedDoesNotHold() {
        UUID author = stored.person();
        UUID signer = stored.person();
        Snapshot snapshot = Snapshot.of(inReview(author, author), new byte[] {1}, 1, StoredBanks.MADE);
        snapshots.insert(snapshot);
        snapshots.insert(Signature.of(snapshot, signer, "Signer", StoredBanks.MADE.plusNanos(123_456_000)));
        assertThat(snapshots.signatures(snapshot.id())).singleElement()
                .satisfies(found -> assertThat(found.intact() && found.isFor(snapshot)).isTrue());

        tamper("review_signature", "update review_signature set signer = 'Someone else' where snapshot_id = ?", snapshot.id());
        assertThat(snapshots.signatures(snapshot.id())).singleElement().satisfies(found -> assertThat(found.intact()).isFalse());
    }

    @Test
    void nobodySignsASnapshotTwice() {
        UUID author = stored.person();
        UUID signer = stored.person();
        Snapshot snapshot = Snapshot.of(inReview(author, author), new byte[] {1}, 1, StoredBanks.MADE);
        snapshots.insert(snapshot);
        snapshots.insert(Signature.of(snapshot, signer, "Signer", StoredBanks.MADE));
        assertThatThrownBy(() -> snapshots.insert(Signature.of(snapshot, signer, "Signer", StoredBanks.MADE)))
                .isInstanceOf(DuplicateKeyException.class);
    }

    @Test
    void whatWaitsIsSignedByNeitherAuthorNorSubmitterNorEditorSinceTheLastApproval() {
        UUID author = stored.person();
        UUID editor = stored.person();
        UUID submitter = stored.person();
        UUID stranger = stored.person();
        UUID bank = stored.bank(author);
        UUID first = stored.revision(bank, editor, BankState.RETURNED);
        UUID second = stored.revision(bank, author, BankState.IN_REVIEW);
        stored.step(second, ReviewStep.SUBMITTED, submitter);
        assertThat(obstacle(author, second)).contains("you wrote it");
        assertThat(obstacle(editor, second)).contains("you wrote it, or a revision that it builds on");
        assertThat(obstacle(submitter, second)).contains("you submitted it");
        assertThat(obstacle(stranger, second)).isNull();

        stored.step(first, ReviewStep.APPROVED, stranger);
        stored.state(first, BankState.APPROVED);
        assertThat(obstacle(editor, second)).isNull();
        stored.state(first, BankState.RECALLED);
        assertThat(obstacle(editor, second)).as("a recalled approval does not count").isNotNull();
    }

    @Test
    void whatWasOvertakenCannotBeSigned() {
        UUID author = stored.person();
        UUID reviewer = stored.person();
        UUID bank = stored.bank(author);
        UUID first = stored.revision(bank, author, BankState.IN_REVIEW);
        stored.step(first, ReviewStep.SUBMITTED, author);
        stored.revision(bank, author, BankState.APPROVED);
        assertThat(obstacle(reviewer, first)).contains("a newer revision is approved");
        assertThat(revisions.newestApproved(bank)).contains(2);
        assertThat(revisions.newestApproved(stored.bank(author))).isEmpty();

        UUID other = inReview(author, author);
        assertThat(obstacle(reviewer, other)).isNull();
        stored.reviseRail();
        assertThat(obstacle(reviewer, other)).contains("the rail has changed");
    }

    @Test
    void returnedToItsAuthorAndSubmitterUntilANewerOneIsThere() {
        UUID author = stored.person();
        UUID submitter = stored.person();
        UUID bank = stored.bank(author);
        UUID revision = stored.revision(bank, author, BankState.RETURNED);
        stored.step(revision, ReviewStep.SUBMITTED, submitter);
        stored.step(revision, ReviewStep.RETURNED, stored.person());
        assertThat(waiting.returned(author)).singleElement().satisfies(row -> assertThat(row.reason()).isEqualTo("Person: Remark"));
        assertThat(waiting.returned(submitter)).hasSize(1);
        assertThat(waiting.returned(stored.person())).isEmpty();
        stored.revision(bank, author, BankState.IN_WORK);
        assertThat(waiting.returned(author)).isEmpty();
    }

    @Test
    void staleOnlyWhileInWorkAndNewest() {
        UUID author = stored.person();
        UUID bank = stored.bank(author);
        stored.revision(bank, author, BankState.IN_WORK);
        assertThat(waiting.stale(author)).isEmpty();
        stored.reviseRail();
        assertThat(waiting.stale(author)).extracting(WaitingRow::bankId).containsExactly(bank);
        stored.revision(bank, author, BankState.IN_WORK);
        assertThat(waiting.stale(author)).isEmpty();
    }

    @Test
    void concessionsEndOnBothSidesOfTheDay() {
        UUID owner = stored.person();
        UUID revision = inReview(stored.person(), stored.person());
        LocalDate end = LocalDate.of(2031, 5, 6);
        Concession concession = new Concession(Requirement.DAMPING, "why", owner, "Owner", end);
        rows.add(revision, concession);
        assertThat(rows.concessions(revision)).containsExactly(concession);
        assertThat(waiting.ending(owner, end)).singleElement().satisfies(row -> assertThat(row.on()).isEqualTo(end));
        assertThat(waiting.ending(owner, end.minusDays(1))).isEmpty();
        assertThat(waiting.ending(stored.person(), end)).isEmpty();
        stored.state(revision, BankState.RECALLED);
        assertThat(waiting.ending(owner, end)).isEmpty();
    }

    @Test
    void aCommentComesBackTiedAndAnOlderOneWithItsWordsAlone() {
        UUID author = stored.person();
        UUID bank = stored.bank(author);
        UUID revision = stored.revision(bank, author, BankState.IN_WORK);
        List<Comment> said = List.of(
                new Comment(UUID.randomUUID(), revision, author, "Person", StoredBanks.MADE, new CommentSubject(Requirement.LIFE, null), "the verdict on life", "a"),
                new Comment(UUID.randomUUID(), revision, author, "Person", StoredBanks.MADE.plusSeconds(1), new CommentSubject(null, 0), "branch 1 'bulk'", "b"),
                new Comment(UUID.randomUUID(), revision, author, "Person", StoredBanks.MADE.plusSeconds(2), CommentSubject.WHOLE, "branch 'bulk'", "as before"));
        said.forEach(rows::add);
        assertThat(rows.commentsOfBank(bank)).usingRecursiveComparison().ignoringFields("at").isEqualTo(said);
    }

    @Test
    void postgresItselfRefusesToChangeWhatWasSigned() {
        assumeTrue(database.isPostgres(), "H2 has no triggers in SQL");
        for (String table : List.of("review_snapshot", "review_signature", "review_step", "concession", "review_comment")) {
            assertThatThrownBy(() -> database.jdbc().sql("delete from " + table).update()).rootCause().hasMessageContaining("append-only");
        }
    }

    /** As someone who may do anything to the database, for the one change that follows. */
    private void tamper(String table, String sql, Object... parameters) {
        database.transaction().executeWithoutResult(status -> {
            if (database.isPostgres()) {
                database.jdbc().sql("alter table " + table + " disable trigger all").update();
            }
            database.jdbc().sql(sql).params(parameters).update();
            if (database.isPostgres()) {
                database.jdbc().sql("alter table " + table + " enable trigger all").update();
            }
        });
    }
}
