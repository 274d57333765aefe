package org.stillrail.library;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.web.Findable;
import org.stillrail.web.SearchWords;

/** Parts by number, maker or technology. */
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
    public List<Found> find(SearchWords words, int most) {
        // Revisions are looked up for what is shown, and where a word is of a technology's name.
        return jdbc.sql("""
                        select p.*, r.technology from (select id, part_number, maker, vetting, latest_number from part p
                        where\s""" + words.in(FindParts::ofTechnology, "p.part_number", "p.maker") + """
                        order by p.part_number fetch next :most rows only) p
                        join part_revision r on r.subject_id = p.id and r.number = p.latest_number order by p.part_number""")
                .params(words.parameters())
                .param("most", most)
                .query((row, index) -> new Found(row.getString("part_number"), "/library/parts/" + row.getObject("id", UUID.class),
                        row.getString("maker") + ", " + Technology.ofKey(row.getString("technology")).label() + ", "
                                + row.getString("vetting").toLowerCase(Locale.ROOT)))
                .list();
    }

    private static String ofTechnology(String word) {
        Set<Technology> technologies = PartSearch.technologies(word);
        return technologies.isEmpty() ? "" : "exists (select 1 from part_revision t where t.subject_id = p.id and t.number = p.latest_number"
                + " and t.technology in (" + technologies.stream().map(each -> "'" + each.key() + "'").collect(Collectors.joining(", ")) + "))";
    }
}
