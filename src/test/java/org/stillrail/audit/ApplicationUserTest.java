package org.stillrail.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.stillrail.support.TestClock;
import org.stillrail.support.TestDatabase;

/** The documented script, on a real PostgreSQL: the application's user writes the record and cannot change it. */
class ApplicationUserTest {

    private static TestDatabase database;

    private static synchronized JdbcClient owner() throws IOException {
        if (database == null) {
            database = TestDatabase.freshPostgres();
            database.jdbc().sql("create role stillrail_app login").update();
            String script = Files.readString(Path.of("docs/postgresql-app-user.sql")).replaceAll("(?m)^--.*$", "");
            for (String statement : script.split(";")) {
                if (!statement.isBlank()) {
                    database.jdbc().sql(statement).update();
                }
            }
        }
        return database.jdbc();
    }

    private void asApplication(String sql) throws IOException {
        owner();
        database.transaction().executeWithoutResult(status -> {
            database.jdbc().sql("set local role stillrail_app").update();
            database.jdbc().sql(sql).update();
        });
    }

    @Test
    void theApplicationWritesTheRecord() throws IOException {
        owner();
        assertThatCode(() -> database.transaction().executeWithoutResult(status -> {
            database.jdbc().sql("set local role stillrail_app").update();
            new AuditTrail(new AuditEvents(database.jdbc()), new TestClock()).record("ada", "tried", "thing", "1", Map.of());
        })).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @ValueSource(strings = {"update audit_event set actor = 'nobody'", "delete from audit_event", "truncate audit_event", "update origin_audit_event set actor = 'nobody'",
        "update review_snapshot set sha256 = ''", "delete from bank_revision", "update part_revision set author = ''",
        "delete from flyway_schema_history"})
    void theApplicationChangesNothingThatMustStay(String sql) {
        assertThatThrownBy(() -> asApplication(sql)).rootCause().hasMessageContaining("permission denied");
    }

    /** The triggers say which tables are only added to; a right that the script forgets to take away would show nowhere else. */
    @Test
    void theScriptTakesTheRightsAwayOnEveryTableThatATriggerKeeps() throws IOException {
        List<String> kept = owner().sql("""
                        select distinct c.relname from pg_trigger t join pg_class c on c.oid = t.tgrelid join pg_proc p on p.oid = t.tgfoid
                        where p.proname = 'refuse_change' order by c.relname""").query(String.class).list();
        assertThat(kept).contains("audit_event", "bench_record", "review_signature", "part_exemption");
        assertThat(kept).filteredOn(table -> database.jdbc().sql("""
                        select has_table_privilege('stillrail_app', :table, 'update') or has_table_privilege('stillrail_app', :table, 'delete')
                            or has_table_privilege('stillrail_app', :table, 'truncate')""").param("table", table).query(Boolean.class).single())
                .as("tables that the application's user may change").isEmpty();
    }
}
