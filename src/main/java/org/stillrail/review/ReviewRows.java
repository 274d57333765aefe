package org.stillrail.review;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.account.CurrentPerson;
import org.stillrail.electrical.requirement.Requirement;

/** Steps, concessions and comments as they are stored; each row is inserted once and stays. */
@Repository
class ReviewRows {

    private final JdbcClient jdbc;

    ReviewRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The caller holds the lock of the bank, so that numbers stay without a gap. */
    void add(UUID revisionId, ReviewStep step, CurrentPerson person, OffsetDateTime at, String remark) {
        jdbc.sql("""
                        insert into review_step (revision_id, number, step, person_id, person, taken_at, remark)
                        select :revisionId, coalesce(max(number), 0) + 1, :step, cast(:personId as uuid), :person,
                            cast(:at as timestamp with time zone), :remark
                        from review_step where revision_id = :revisionId""")
                .param("revisionId", revisionId)
                .param("step", step.name())
                .param("personId", person.id())
                .param("person", person.displayName())
                .param("at", at)
                .param("remark", remark)
                .update();
    }

    /** Of all revisions of a bank, oldest first; what an approval supersedes comes after it. */
    List<StepTaken> stepsOfBank(UUID bankId) {
        return jdbc.sql("""
                        select t.* from review_step t join bank_revision r on r.id = t.revision_id
                        where r.subject_id = :bankId
                        order by t.taken_at, case when t.step = :last then 1 else 0 end, r.number, t.number""")
                .param("bankId", bankId)
                .param("last", ReviewStep.SUPERSEDED.name())
                .query(ReviewRows::step)
                .list();
    }

    void add(UUID revisionId, Concession concession) {
        jdbc.sql("""
                        insert into concession (revision_id, requirement, reason, owner_id, owner, ends_on)
                        values (:revisionId, :requirement, :reason, :ownerId, :owner, :endsOn)""")
                .param("revisionId", revisionId)
                .param("requirement", concession.requirement().name())
                .param("reason", concession.reason())
                .param("ownerId", concession.ownerId())
                .param("owner", concession.owner())
                .param("endsOn", concession.endsOn())
                .update();
    }

    List<Concession> concessions(UUID revisionId) {
        return jdbc.sql("select * from concession where revision_id = :revisionId order by requirement")
                .param("revisionId", revisionId)
                .query(ReviewRows::concession)
                .list();
    }

    void add(Comment comment) {
        jdbc.sql("""
                        insert into review_comment (id, revision_id, person_id, person, made_at, requirement, branch, about, remark)
                        values (:id, :revisionId, :personId, :person, :at, :requirement, :branch, :about, :remark)""")
                .param("id", comment.id())
                .param("revisionId", comment.revisionId())
                .param("personId", comment.personId())
                .param("person", comment.person())
                .param("at", comment.at())
                .param("requirement", comment.subject().requirement() == null ? null : comment.subject().requirement().name())
                .param("branch", comment.subject().branch())
                .param("about", comment.about())
                .param("remark", comment.remark())
                .update();
    }

    /** On all revisions of a bank, oldest first. */
    List<Comment> commentsOfBank(UUID bankId) {
        return jdbc.sql("""
                        select c.* from review_comment c join bank_revision r on r.id = c.revision_id
                        where r.subject_id = :bankId order by c.made_at, c.id""")
                .param("bankId", bankId)
                .query(ReviewRows::comment)
                .list();
    }

    private static Comment comment(ResultSet row, int index) throws SQLException {
        String requirement = row.getString("requirement");
        return new Comment(row.getObject("id", UUID.class), row.getObject("revision_id", UUID.class), row.getObject("person_id", UUID.class),
                row.getString("person"), row.getObject("made_at", OffsetDateTime.class),
                new CommentSubject(requirement == null ? null : Requirement.valueOf(requirement), row.getObject("branch", Integer.class)),
                row.getString("about"), row.getString("remark"));
    }

    private static StepTaken step(ResultSet row, int index) throws SQLException {
        return new StepTaken(row.getObject("revision_id", UUID.class), row.getInt("number"), ReviewStep.valueOf(row.getString("step")),
                row.getObject("person_id", UUID.class), row.getString("person"), row.getObject("taken_at", OffsetDateTime.class),
                row.getString("remark"));
    }

    private static Concession concession(ResultSet row, int index) throws SQLException {
        return new Concession(Requirement.valueOf(row.getString("requirement")), row.getString("reason"),
                row.getObject("owner_id", UUID.class), row.getString("owner"), row.getObject("ends_on", LocalDate.class));
    }
}
