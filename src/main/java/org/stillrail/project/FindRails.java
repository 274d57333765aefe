package org.stillrail.project;

import java.util.List;
import java.util.UUID;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.web.Findable;
import org.stillrail.web.SearchWords;

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
    public List<Found> find(SearchWords words, int most) {
        return jdbc.sql("""
                        select l.id, l.name, p.name as project from rail l join project p on p.id = l.project_id
                        where\s""" + words.in("l.name") + """
                        order by l.name, p.name, l.id fetch next :most rows only""")
                .params(words.parameters())
                .param("most", most)
                .query((row, index) -> new Found(row.getString("name"), "/rails/" + row.getObject("id", UUID.class), row.getString("project")))
                .list();
    }
}
