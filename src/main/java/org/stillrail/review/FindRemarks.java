package org.stillrail.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.web.Findable;
import org.stillrail.web.SearchWords;

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

    private record Remark(UUID revisionId, String said) {
    }

    /** Where a remark stands. */
    private record Place(UUID bankId, String bank, int number) {
    }

    /** First what was said, then where: joined in one statement, H2 looks the remarks up anew for every bank revision there is. */
    @Override
    public List<Found> find(SearchWords words, int most) {
        List<Remark> remarks = jdbc.sql("""
                        select revision_id, person, remark as said, made_at as said_at from review_comment
                            where\s""" + words.in("remark") + """
                        union all select revision_id, person, remark, taken_at from review_step
                            where\s""" + words.in("remark") + """
                        union all select c.revision_id, c.owner, c.reason, s.taken_at from concession c
                            join review_step s on s.revision_id = c.revision_id and s.step = 'SUBMITTED'
                            where\s""" + words.in("c.reason") + """
                        order by said_at desc, revision_id fetch next :most rows only""")
                .params(words.parameters())
                .param("most", most)
                .query((row, index) -> new Remark(row.getObject("revision_id", UUID.class), row.getString("person") + ": " + row.getString("said")))
                .list();
        Map<UUID, Place> places = places(remarks.stream().map(Remark::revisionId).toList());
        return remarks.stream().map(remark -> {
            Place place = places.get(remark.revisionId());
            return new Found(place.bank() + ", revision " + place.number(),
                    "/banks/" + place.bankId() + "/revisions/" + place.number() + "#review", remark.said());
        }).toList();
    }

    private Map<UUID, Place> places(List<UUID> revisionIds) {
        Map<UUID, Place> places = new HashMap<>();
        if (!revisionIds.isEmpty()) {
            jdbc.sql("select r.id, r.number, b.id as bank_id, b.name from bank_revision r join bank b on b.id = r.subject_id where r.id in (:ids)")
                    .param("ids", revisionIds)
                    .query(row -> {
                        places.put(row.getObject("id", UUID.class),
                                new Place(row.getObject("bank_id", UUID.class), row.getString("name"), row.getInt("number")));
                    });
        }
        return places;
    }
}
