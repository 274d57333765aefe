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

    /** @param where project and rail, or whose scratch bank it is */
    record Match(UUID id, String name, String where) {
    }

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
        return matches(words, most, "b.name").stream().map(match -> new Found(match.name(), "/banks/" + match.id(), match.where())).toList();
    }

    /** Those whose name, rail and project together hold every word. */
    List<Match> matchesAnywhere(SearchWords words, int most) {
        return matches(words, most, "b.name", "l.name", "p.name");
    }

    private List<Match> matches(SearchWords words, int most, String... columns) {
        return jdbc.sql("""
                        select b.id, b.name, b.owner, l.name as rail, p.name as project from bank b
                        left join rail l on l.id = b.rail_id left join project p on p.id = l.project_id
                        where\s""" + words.in(columns) + """
                        order by b.name, b.id fetch next :most rows only""")
                .params(words.parameters())
                .param("most", most)
                .query((row, index) -> new Match(row.getObject("id", UUID.class), row.getString("name"),
                        row.getString("rail") == null ? "scratch bank of " + row.getString("owner")
                                : row.getString("project") + ", " + row.getString("rail")))
                .list();
    }
}
