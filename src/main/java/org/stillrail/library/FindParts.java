package org.stillrail.library;

import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.web.Findable;

/** Parts by number or maker. */
@Component
@Order(100)
class FindParts implements Findable {

    private final JdbcClient jdbc;

    FindParts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String heading() {
        return "Parts";
    }

    @Override
    public List<Found> find(String pattern, int most) {
        return jdbc.sql("""
                        select id, part_number, maker, vetting from part
                        where lower(part_number) like :pattern escape '!' or lower(maker) like :pattern escape '!'
                        order by part_number fetch next :most rows only""")
                .param("pattern", pattern)
                .param("most", most)
                .query((row, index) -> new Found(row.getString("part_number"), "/library/parts/" + row.getObject("id", UUID.class),
                        row.getString("maker") + ", " + row.getString("vetting").toLowerCase(Locale.ROOT)))
                .list();
    }
}
