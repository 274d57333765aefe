package org.stillrail.bank;

import java.util.List;
import java.util.UUID;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.web.Findable;
import org.stillrail.web.SearchWords;

/** Banks by name. */
@Component
@Order(300)
class FindBanks implements Findable {

    private final JdbcClient jdbc;

    FindBanks(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String heading() {
        return "Banks";
    }

    @Override
    public List<Found> find(SearchWords words, int most) {
        return jdbc.sql("""
                        select b.id, b.name, b.owner, l.name as rail, p.name as project from bank b
                        left join rail l on l.id = b.rail_id left join project p on p.id = l.project_id
                        where\s""" + words.in("b.name") + """
                        order by b.name, b.id fetch next :most rows only""")
                .params(words.parameters())
                .param("most", most)
                .query((row, index) -> new Found(row.getString("name"), "/banks/" + row.getObject("id", UUID.class),
                        row.getString("rail") == null ? "scratch bank of " + row.getString("owner")
                                : row.getString("project") + ", " + row.getString("rail")))
                .list();
    }
}
