package org.stillrail.review;

import java.util.List;
import java.util.UUID;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.web.Findable;

/** What people said in reviews: comments, remarks with a step, reasons of concessions. */
@Component
@Order(400)
class FindRemarks implements Findable {

    private final JdbcClient jdbc;

    FindRemarks(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String heading() {
        return "Comments";
    }

    @Override
    public List<Found> find(String pattern, int most) {
        return jdbc.sql("""
                        select b.id, b.name, r.number, t.person, t.said, t.said_at from (
                            select revision_id, person, remark as said, made_at as said_at from review_comment
                                where lower(remark) like :pattern escape '!'
                            union all select revision_id, person, remark, taken_at from review_step
                                where lower(remark) like :pattern escape '!'
                            union all select c.revision_id, c.owner, c.reason, s.taken_at from concession c
                                join review_step s on s.revision_id = c.revision_id and s.step = 'SUBMITTED'
                                where lower(c.reason) like :pattern escape '!') t
                        join bank_revision r on r.id = t.revision_id join bank b on b.id = r.subject_id
                        order by t.said_at desc, b.id fetch next :most rows only""")
                .param("pattern", pattern)
                .param("most", most)
                .query((row, index) -> new Found(row.getString("name") + ", revision " + row.getInt("number"),
                        "/banks/" + row.getObject("id", UUID.class) + "/revisions/" + row.getInt("number") + "#review",
                        row.getString("person") + ": " + row.getString("said")))
                .list();
    }
}
