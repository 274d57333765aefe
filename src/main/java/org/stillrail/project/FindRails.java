package org.stillrail.project;

import java.util.List;
import java.util.UUID;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.web.Findable;

/** Rails by name. */
@Component
@Order(210)
class FindRails implements Findable {

    private final JdbcClient jdbc;

    FindRails(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String heading() {
        return "Rails";
    }

    @Override
    public List<Found> find(String pattern, int most) {
        return jdbc.sql("""
                        select l.id, l.name, p.name as project from rail l join project p on p.id = l.project_id
                        where lower(l.name) like :pattern escape '!' order by l.name, p.name, l.id fetch next :most rows only""")
                .param("pattern", pattern)
                .param("most", most)
                .query((row, index) -> new Found(row.getString("name"), "/rails/" + row.getObject("id", UUID.class), row.getString("project")))
                .list();
    }
}
