package org.stillrail.project;

import java.util.List;
import java.util.UUID;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.web.Findable;

/** Projects by name or purpose. */
@Component
@Order(200)
class FindProjects implements Findable {

    private final JdbcClient jdbc;

    FindProjects(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String heading() {
        return "Projects";
    }

    @Override
    public List<Found> find(String pattern, int most) {
        return jdbc.sql("""
                        select id, name, purpose from project
                        where lower(name) like :pattern escape '!' or lower(purpose) like :pattern escape '!'
                        order by name fetch next :most rows only""")
                .param("pattern", pattern)
                .param("most", most)
                .query((row, index) -> new Found(row.getString("name"), "/projects/" + row.getObject("id", UUID.class), row.getString("purpose")))
                .list();
    }
}
