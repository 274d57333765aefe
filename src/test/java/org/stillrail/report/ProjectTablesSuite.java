package org.stillrail.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.stillrail.support.TestDatabase;

/** No table is forgotten: a project's file holds it, or says why not. */
abstract class ProjectTablesSuite {

    private final TestDatabase database;

    ProjectTablesSuite(TestDatabase database) {
        this.database = database;
    }

    private List<String> stored() {
        return database.jdbc().sql("""
                        select table_name from information_schema.tables where table_type = 'BASE TABLE'
                        and lower(table_schema) = 'public'""")
                .query(String.class).list().stream().map(name -> name.toLowerCase(Locale.ROOT)).filter(name -> !name.equals("flyway_schema_history"))
                .toList();
    }

    @Test
    void everyTableIsExportedOrLeftOutForAReason() {
        List<String> named = Stream.concat(Arrays.stream(ProjectTable.values()).map(ProjectTable::sqlName),
                Arrays.stream(LeftOutTable.values()).map(LeftOutTable::sqlName)).toList();
        assertThat(named).doesNotHaveDuplicates();
        assertThat(stored()).as("tables of db/migration, each in ProjectTable or, with the reason, in LeftOutTable")
                .containsExactlyInAnyOrderElementsOf(named);
        assertThat(LeftOutTable.values()).allMatch(table -> table.reason().length() > 10);
    }

    @Test
    void theKeyOfEachTableIsItsPrimaryKey() {
        for (ProjectTable table : ProjectTable.values()) {
            assertThat(database.jdbc().sql("""
                            select k.column_name from information_schema.table_constraints c join information_schema.key_column_usage k
                            on k.constraint_name = c.constraint_name and k.table_name = c.table_name
                            where c.constraint_type = 'PRIMARY KEY' and lower(c.table_schema) = 'public' and lower(c.table_name) = :name
                            and lower(k.table_schema) = 'public'""")
                    .param("name", table.sqlName()).query(String.class).list().stream().map(column -> column.toLowerCase(Locale.ROOT)))
                    .as(table.sqlName()).containsExactlyInAnyOrderElementsOf(table.key());
        }
    }
}
