package org.stillrail.review;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.bank.BankEvidence;
import org.stillrail.bank.BankState;
import org.stillrail.electrical.requirement.Requirement;

/** What waits for a person, over all banks, each list by one query. The reasons are those of {@link ReviewRules} in few words. */
@Repository
class WaitingRows {

    private static final String COLUMNS = "b.id as bank_id, b.name as bank, r.number, l.name as rail, j.name as project, r.author";

    private static final String REVISIONS = """
             from bank_revision_state s
            join bank_revision r on r.id = s.revision_id
            join bank b on b.id = r.subject_id
            join rail l on l.id = b.rail_id
            join project j on j.id = l.project_id
            """;

    private static final String STALE =
            "r.rail_revision_id <> (select v.id from rail_revision v where v.subject_id = l.id and v.number = l.latest_number)";

    private static final String WRITTEN = """
            exists (select 1 from bank_revision w where w.subject_id = r.subject_id and w.author_id = :personId and w.number <= r.number
                and w.number > (select coalesce(max(a.number), 0) from bank_revision a
                    join bank_revision_state z on z.revision_id = a.id and z.state <> 'RECALLED'
                    join review_step y on y.revision_id = a.id and y.step = 'APPROVED'
                    where a.subject_id = r.subject_id and a.number < r.number))""";

    private static final String NEWER_APPROVED = """
            exists (select 1 from bank_revision a join bank_revision_state z on z.revision_id = a.id and z.state = 'APPROVED'
                where a.subject_id = r.subject_id and a.number > r.number)""";

    /** The person wrote or submitted it. Looked up from the revision in hand: H2 would make a list of all that are theirs anew for each. */
    private static final String MINE = """
            (r.author_id = :personId or exists (select 1 from review_step y
                where y.revision_id = r.id and y.person_id = :personId and y.step = 'SUBMITTED'))""";

    private final JdbcClient jdbc;

    WaitingRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All that is in review, the longest wait first, with why the person may not sign it. */
    List<WaitingRow> inReview(UUID personId, int most) {
        return jdbc.sql("select " + COLUMNS + ", t.taken_at, t.person_id = :personId as submitted, " + WRITTEN + " as written, "
                        + NEWER_APPROVED + " as overtaken, exists (select 1 from review_signature g join review_snapshot x on x.id = g.snapshot_id"
                        + " where x.revision_id = r.id and g.signer_id = :personId) as signed, " + STALE + " as stale" + REVISIONS + """
                        join review_step t on t.revision_id = r.id and t.step = 'SUBMITTED'
                        where s.state = 'IN_REVIEW' order by t.taken_at, b.id limit :most""")
                .param("personId", personId)
                .param("most", most)
                .query((row, index) -> row(row, day(row), obstacle(row)))
                .list();
    }

    /** Revisions that the person wrote or submitted, returned and not followed by a newer one. */
    List<WaitingRow> returned(UUID personId) {
        return jdbc.sql("select " + COLUMNS + ", t.taken_at, t.person, t.remark" + REVISIONS + """
                        join review_step t on t.revision_id = r.id and t.step = 'RETURNED'
                        where s.state = 'RETURNED' and r.number = b.latest_number and\s""" + MINE + " order by t.taken_at")
                .param("personId", personId)
                .query((row, index) -> row(row, day(row), row.getString("person") + ": " + row.getString("remark")))
                .list();
    }

    /** Newest revisions of the person, in work, whose rail has changed. */
    List<WaitingRow> stale(UUID personId) {
        return jdbc.sql("select " + COLUMNS + ", r.made_at as taken_at" + REVISIONS
                        + "where s.state = 'IN_WORK' and r.number = b.latest_number and r.author_id = :personId and " + STALE
                        + " order by r.made_at")
                .param("personId", personId)
                .query((row, index) -> row(row, day(row), null))
                .list();
    }

    /** Approved revisions that the person wrote or submitted and whose parts say something else by now. */
    List<WaitingRow> evidenceChanged(UUID personId) {
        return jdbc.sql("select " + COLUMNS + ", r.made_at as taken_at, string_agg(distinct p.part_number, ', ') as parts" + REVISIONS
                        + BankEvidence.PARTS + "where s.state = 'APPROVED' and " + MINE + " and " + BankEvidence.CHANGED + """
                         group by b.id, b.name, r.number, l.name, j.name, r.author, r.made_at order by r.made_at""")
                .param("personId", personId)
                .query((row, index) -> row(row, day(row), row.getString("parts")))
                .list();
    }

    /** Concessions of the person that end by a day or have ended, on revisions that are in use or on their way to it. */
    List<WaitingRow> ending(UUID personId, LocalDate by) {
        return jdbc.sql("select " + COLUMNS + ", c.requirement, c.reason, c.ends_on" + REVISIONS + """
                        join concession c on c.revision_id = r.id
                        where c.owner_id = :personId and c.ends_on <= :by and s.state in (:inUse) order by c.ends_on""")
                .param("personId", personId)
                .param("by", by)
                .param("inUse", List.of(BankState.APPROVED.name(), BankState.IN_REVIEW.name()))
                .query((row, index) -> row(row, row.getObject("ends_on", LocalDate.class),
                        Requirement.valueOf(row.getString("requirement")).label() + ": " + row.getString("reason")))
                .list();
    }

    private static String obstacle(ResultSet row) throws SQLException {
        if (row.getBoolean("written")) {
            return "you wrote it, or a revision that it builds on";
        }
        if (row.getBoolean("submitted")) {
            return "you submitted it";
        }
        if (row.getBoolean("signed")) {
            return "you signed it; it waits for the second signature";
        }
        if (row.getBoolean("overtaken")) {
            return "a newer revision is approved already";
        }
        return row.getBoolean("stale") ? "the rail has changed since: it can only be returned" : null;
    }

    private static LocalDate day(ResultSet row) throws SQLException {
        return row.getObject("taken_at", OffsetDateTime.class).toLocalDate();
    }

    private static WaitingRow row(ResultSet row, LocalDate on, String reason) throws SQLException {
        return new WaitingRow(row.getObject("bank_id", UUID.class), row.getString("bank"), row.getInt("number"),
                row.getString("project") + ", " + row.getString("rail"), row.getString("author"), on, reason);
    }
}
