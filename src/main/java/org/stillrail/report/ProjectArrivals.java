package org.stillrail.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.stillrail.audit.AuditLines;
import org.stillrail.document.Sha256;

/**
 * Holds a project's file against what is here, row by row: every hash has to be that of what it stands for, and a row that is here
 * already has to say the same. A name that is taken here does not stand in the way: the newcomer gets a tag.
 */
@Component
class ProjectArrivals {

    /** Of a part that is here already, these are this team's own business. */
    private static final Set<String> OWN = Set.of("vetting", "vetting_reason", "replacement_id", "vetting_changed_at", "latest_number", "version", "maker");

    private final ProjectRowsReader reader;
    private final PartHistories histories;
    private final JdbcClient jdbc;
    private final AuditLines lines;

    ProjectArrivals(ProjectRowsReader reader, PartHistories histories, JdbcClient jdbc, AuditLines lines) {
        this.reader = reader;
        this.histories = histories;
        this.jdbc = jdbc;
        this.lines = lines;
    }

    /** @throws IllegalArgumentException where a cell is not what its column holds, naming the column */
    Arrival of(ProjectFile file) {
        List<String> conflicts = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        Map<ProjectTable, List<Map<String, Object>>> all = new LinkedHashMap<>();
        Map<ProjectTable, List<Map<String, Object>>> fresh = new LinkedHashMap<>();
        for (ProjectTable table : ProjectTable.values()) {
            all.put(table, values(table, file.rows(table)));
            fresh.put(table, fresh(table, all.get(table), file.rows(table), conflicts, notes));
        }
        conflicts.addAll(OriginLines.conflicts(fresh.get(ProjectTable.ORIGIN_AUDIT_EVENT)));
        List<LaterRevisions> later = histories.later(all.get(ProjectTable.PART_REVISION), fresh.get(ProjectTable.PART_REVISION), conflicts);
        if (fresh.get(ProjectTable.PROJECT).size() != 1 && conflicts.isEmpty()) {
            conflicts.add("This project is here already.");
        }
        later.forEach(part -> notes.add(part.sentence(banksWith(part.partId()))));
        file.people().forEach((id, person) -> noteStranger(UUID.fromString(id), person, notes));
        return new Arrival(fresh, later, conflicts, notes);
    }

    private List<Map<String, Object>> values(ProjectTable table, List<Map<String, Object>> rows) {
        Map<String, Cells.Type> columns = reader.columns(table);
        List<Map<String, Object>> all = new ArrayList<>();
        for (Map<String, Object> row : rows) {
            Map<String, Object> values = new HashMap<>();
            row.forEach((column, cell) -> {
                Cells.Type type = columns.get(column);
                if (type == null) {
                    throw new IllegalArgumentException("Table " + table.sqlName() + " has no column '" + column + "' in this installation");
                }
                values.put(column, Cells.value(type, table.sqlName() + "." + column, cell));
            });
            for (String column : table.needed()) {
                if (values.get(column) == null) {
                    throw new IllegalArgumentException("A row of table " + table.sqlName() + " lacks its " + column);
                }
            }
            table.words().forEach((column, kind) -> requireWord(table, column, values.get(column), kind));
            all.add(values);
        }
        return all;
    }

    private static void requireWord(ProjectTable table, String column, Object word, Class<? extends Enum<?>> kind) {
        if (Arrays.stream(kind.getEnumConstants()).noneMatch(known -> known.name().equals(word))) {
            throw new IllegalArgumentException("Table " + table.sqlName() + " has '" + word + "' as " + column + ", which this installation does not know");
        }
    }

    /** Rows that are not here yet; what is wrong with any goes to the conflicts. */
    private List<Map<String, Object>> fresh(
            ProjectTable table, List<Map<String, Object>> all, List<Map<String, Object>> rows, List<String> conflicts, List<String> notes) {
        List<Map<String, Object>> fresh = new ArrayList<>();
        int left = 0;
        for (int i = 0; i < all.size(); i++) {
            Map<String, Object> values = all.get(i);
            checkHash(table, values, conflicts);
            Map<String, Object> here = reader.find(table, values);
            if (here == null) {
                checkChain(table, values, conflicts);
                if (isJudgedHere(table, values)) {
                    left++;
                } else {
                    fresh.add(tagged(table, values, notes));
                }
            } else if (!same(table, here, rows.get(i))) {
                conflicts.add(what(table, rows.get(i)) + " is here already and says something else.");
            }
        }
        if (left > 0) {
            notes.add((table == ProjectTable.PART_EXEMPTION ? "Why a part that is here already may lack something for vetting"
                    : "Which findings of a sweep that is here already do not matter")
                    + " is for this team to say: " + (left == 1 ? "one reason of the file stays" : left + " reasons of the file stay") + " out.");
        }
        return fresh;
    }

    /** A line of this installation's own record that is not in it. */
    private void checkChain(ProjectTable table, Map<String, Object> values, List<String> conflicts) {
        if (table == ProjectTable.ORIGIN_AUDIT_EVENT && lines.ownChain().equals(values.get("chain"))) {
            conflicts.add("Line " + values.get("sequence_number") + " is said to be of this installation's own record, and is not there.");
        }
    }

    private static void checkHash(ProjectTable table, Map<String, Object> values, List<String> conflicts) {
        String expected = switch (table) {
            case PART_REVISION, RAIL_REVISION, BANK_REVISION, SWEEP, FIXTURE_SWEEP, BENCH_RECORD ->
                    values.get("document") == null ? "" : Sha256.of((String) values.get("document"));
            case RAW_FILE, REVIEW_SNAPSHOT -> values.get("content") == null ? "" : Sha256.of((byte[]) values.get("content"));
            default -> null;
        };
        if (expected != null && !expected.equals(values.get("sha256"))) {
            conflicts.add(what(table, values) + " does not give its SHA-256: the file was changed.");
        }
    }

    /** Whether it judges a part or sweep that is here already: what such a part is excused from, or which finding does not matter, is for this team to say. */
    private boolean isJudgedHere(ProjectTable table, Map<String, Object> values) {
        return switch (table) {
            case PART_EXEMPTION -> isHere("part", values.get("part_id"));
            case FINDING_ACCEPTANCE -> isHere("sweep", values.get("sweep_id"));
            default -> false;
        };
    }

    private boolean isHere(String table, Object id) {
        return jdbc.sql("select count(*) from " + table + " where id = :id").param("id", id).query(Integer.class).single() > 0;
    }

    /** The row with another name where its own is taken here by something else. */
    private Map<String, Object> tagged(ProjectTable table, Map<String, Object> values, List<String> notes) {
        String column = table.tagged();
        if (column == null || !isTaken(table, column, (String) values.get(column))) {
            return values;
        }
        String there = (String) values.get(column);
        String here = Elsewhere.here((UUID) values.get("id"), there);
        notes.add((table == ProjectTable.PART ? "Another part '" : "Another fixture '") + there + "' is here already: the one of the file is listed as '" + here + "'.");
        Map<String, Object> row = new HashMap<>(values);
        row.put(column, here);
        return row;
    }

    boolean isTaken(ProjectTable table, String column, String name) {
        return jdbc.sql("select count(*) from " + table.sqlName() + " where " + column + " = :name").param("name", name).query(Integer.class).single() > 0;
    }

    private int banksWith(UUID part) {
        return jdbc.sql("select count(distinct r.subject_id) from bank_part u join bank_revision r on r.id = u.revision_id where u.part_id = :part")
                .param("part", part).query(Integer.class).single();
    }

    private void noteStranger(UUID id, ProjectFile.Person person, List<String> notes) {
        if (!isHere("person", id)) {
            notes.add(person.displayName() + " (" + person.userName() + ") has no account here and becomes the name '" + Elsewhere.here(id, person).displayName()
                    + "', which cannot sign in.");
        }
    }

    private static boolean same(ProjectTable table, Map<String, Object> here, Map<String, Object> row) {
        Map<String, Object> a = new HashMap<>(here);
        Map<String, Object> b = new HashMap<>(row);
        if (table == ProjectTable.PART) {
            a.keySet().removeAll(OWN);
            b.keySet().removeAll(OWN);
        }
        return a.keySet().equals(b.keySet()) && a.keySet().stream().allMatch(column -> equal(a.get(column), b.get(column)));
    }

    private static boolean equal(Object a, Object b) {
        return a instanceof Number x && b instanceof Number y ? x.doubleValue() == y.doubleValue() : Objects.equals(a, b);
    }

    private static String what(ProjectTable table, Map<String, Object> row) {
        if (table == ProjectTable.ORIGIN_AUDIT_EVENT) {
            return "Line " + row.get("sequence_number") + " of the record";
        }
        Object name = row.getOrDefault("part_number", row.getOrDefault("name", row.getOrDefault("file_name", row.getOrDefault("id", ""))));
        return "The " + table.sqlName().replace('_', ' ') + " " + name;
    }
}
