package org.stillrail.project;

import java.util.List;
import java.util.UUID;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.web.Findable;
import org.stillrail.web.SearchWords;

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
    public List<Found> find(SearchWords words, int most) {
        return jdbc.sql("""
                        select id, name, purpose from project
                        where\s""" + words.in("name", "purpose") + """
                        order by name fetch next :most rows only""")
                .params(words.parameters())
                .param("most", most)
                .query((row, index) -> new Found(row.getString("name"), "/projects/" + row.getObject("id", UUID.class), row.getString("purpose")))
                .list();
    }
}
