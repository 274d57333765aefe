package org.stillrail.library;

import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.account.CurrentPerson;
import org.stillrail.sweepfile.ColumnMapping;

/** How the columns of an instrument's files are read, kept under names. */
@Repository
class ColumnMappings {

    private final JdbcClient jdbc;

    ColumnMappings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Names by id. */
    Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        jdbc.sql("select id, name from column_mapping order by name")
                .query((row, index) -> Map.entry(row.getObject("id", UUID.class).toString(), row.getString("name")))
                .list().forEach(entry -> names.put(entry.getKey(), entry.getValue()));
        return names;
    }

    Optional<ColumnMapping> find(UUID id) {
        return jdbc.sql("select columns from column_mapping where id = :id").param("id", id).query(String.class).optional().map(ColumnMapping::parse);
    }

    /** @return false where the name is taken */
    boolean insert(String name, ColumnMapping mapping, CurrentPerson author, OffsetDateTime at) {
        return jdbc.sql("""
                        insert into column_mapping (id, name, columns, author, made_at) values (:id, :name, :columns, :author, :at)
                        on conflict do nothing""")
                .param("id", UUID.randomUUID())
                .param("name", name)
                .param("columns", mapping.toText())
                .param("author", author.displayName())
                .param("at", at)
                .update() == 1;
    }
}
