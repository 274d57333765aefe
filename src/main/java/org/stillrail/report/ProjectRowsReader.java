package org.stillrail.report;

import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the rows of a project, whatever columns its tables have. */
@Repository
class ProjectRowsReader {

    private static final List<UUID> NOBODY = List.of(new UUID(0, 0));

    private final JdbcClient jdbc;

    ProjectRowsReader(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All rows, by table. */
    Map<String, List<Map<String, Object>>> rows(UUID projectId) {
        Extent extent = extent(projectId);
        List<String> subjects = subjects(extent);
        Map<String, List<Map<String, Object>>> tables = new LinkedHashMap<>();
        for (ProjectTable table : ProjectTable.values()) {
            tables.put(table.sqlName(), extent.bind(jdbc.sql("select * from " + table.source() + " where " + table.condition()
                            + " order by " + String.join(", ", table.key())))
                    .param("subjects", subjects)
                    .query((row, index) -> cells(table, row))
                    .list());
        }
        return tables;
    }

    /** Ids of everything of a project that the record may speak of: itself, its rails and banks, their parts, sweeps and fixtures. */
    List<String> subjects(UUID projectId) {
        return subjects(extent(projectId));
    }

    private List<String> subjects(Extent extent) {
        List<String> subjects = new ArrayList<>();
        for (ProjectTable table : List.of(ProjectTable.PROJECT, ProjectTable.RAIL, ProjectTable.BANK, ProjectTable.PART, ProjectTable.SWEEP,
                ProjectTable.FIXTURE_SWEEP)) {
            extent.bind(jdbc.sql("select id from " + table.sqlName() + " where " + table.condition())).query(UUID.class).list()
                    .forEach(id -> subjects.add(id.toString()));
        }
        return subjects;
    }

    private Extent extent(UUID projectId) {
        List<UUID> revisions = jdbc.sql("""
                        select r.id from bank_revision r join bank b on b.id = r.subject_id join rail l on l.id = b.rail_id
                        where l.project_id = :project""").param("project", projectId).query(UUID.class).list();
        List<UUID> parts = revisions.isEmpty() ? List.of()
                : jdbc.sql("select distinct part_id from bank_part where revision_id in (:revisions)").param("revisions", revisions).query(UUID.class).list();
        return new Extent(projectId, revisions.isEmpty() ? NOBODY : revisions, parts.isEmpty() ? NOBODY : withReplacements(parts));
    }

    /** With what takes the place of these parts where they are withdrawn, and of that in its turn. */
    private List<UUID> withReplacements(List<UUID> parts) {
        Set<UUID> all = new LinkedHashSet<>(parts);
        List<UUID> added = parts;
        while (!added.isEmpty()) {
            added = jdbc.sql("select distinct replacement_id from part where id in (:parts) and replacement_id is not null")
                    .param("parts", added).query(UUID.class).list().stream().filter(all::add).toList();
        }
        return List.copyOf(all);
    }

    /** What a project reaches. */
    private record Extent(UUID project, List<UUID> revisions, List<UUID> parts) {

        private JdbcClient.StatementSpec bind(JdbcClient.StatementSpec statement) {
            return statement.param("project", project).param("revisions", revisions).param("parts", parts);
        }
    }

    /** Types of the columns of a table as a file has them, by name. */
    Map<String, Cells.Type> columns(ProjectTable table) {
        return jdbc.sql("select * from " + table.source() + " where 1 = 0").query(row -> {
            Map<String, Cells.Type> columns = new LinkedHashMap<>();
            ResultSetMetaData data = row.getMetaData();
            for (int i = 1; i <= data.getColumnCount(); i++) {
                columns.put(data.getColumnName(i).toLowerCase(Locale.ROOT), Cells.type(data.getColumnType(i), data.getColumnTypeName(i)));
            }
            return columns;
        });
    }

    /** The row with this key as cells, or null. */
    Map<String, Object> find(ProjectTable table, Map<String, Object> values) {
        List<String> conditions = new ArrayList<>();
        table.key().forEach(column -> conditions.add(column + " = :" + column));
        JdbcClient.StatementSpec query = jdbc.sql("select * from " + table.source() + " where " + String.join(" and ", conditions));
        for (String column : table.key()) {
            query = query.param(column, values.get(column));
        }
        return query.query((row, index) -> cells(table, row)).optional().orElse(null);
    }

    /** A name that was made different here is as it is at home. */
    private static Map<String, Object> cells(ProjectTable table, ResultSet row) throws SQLException {
        Map<String, Object> cells = cells(row);
        if (table.tagged() != null) {
            cells.computeIfPresent(table.tagged(), (column, name) -> Elsewhere.there(UUID.fromString((String) cells.get("id")), (String) name));
        }
        return cells;
    }

    private static Map<String, Object> cells(ResultSet row) throws SQLException {
        Map<String, Object> cells = new LinkedHashMap<>();
        ResultSetMetaData data = row.getMetaData();
        for (int i = 1; i <= data.getColumnCount(); i++) {
            Cells.Type type = Cells.type(data.getColumnType(i), data.getColumnTypeName(i));
            Object value = switch (type) {
                case BYTES -> row.getBytes(i);
                case WHOLE -> row.getLong(i);
                case NUMBER -> row.getDouble(i);
                default -> row.getObject(i, Cells.javaType(type));
            };
            if (!row.wasNull()) {
                cells.put(data.getColumnName(i).toLowerCase(Locale.ROOT), Cells.cell(value));
            }
        }
        return cells;
    }
}
