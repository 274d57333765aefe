package org.stillrail.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.audit.AuditLines;
import org.stillrail.audit.AuditTrail;
import org.stillrail.bank.Banks;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Sha256;
import org.stillrail.review.ReviewRecords;

/**
 * Whole projects out and in. What comes in is checked row by row: every hash has to be that of what it stands for, every signature
 * has to hold, and a row that is here already has to say the same. All is stored or nothing. Lines of the origin's record stay
 * apart from this installation's chain, to which the import itself adds one line.
 */
@Service
class ProjectFiles {

    /** Of a part that is here already, these are this team's own business. */
    private static final Set<String> OWN = Set.of("vetting", "vetting_reason", "replacement_id", "vetting_changed_at", "latest_number", "version", "maker");

    private static final Set<String> PERSON_COLUMNS = Set.of("author_id", "person_id", "owner_id", "importer_id", "signer_id");

    private final ProjectRowsReader reader;
    private final JdbcClient jdbc;
    private final Banks banks;
    private final ReviewRecords reviews;
    private final AuditTrail audit;
    private final AuditLines lines;

    ProjectFiles(ProjectRowsReader reader, JdbcClient jdbc, Banks banks, ReviewRecords reviews, AuditTrail audit, AuditLines lines) {
        this.lines = lines;
        this.reader = reader;
        this.jdbc = jdbc;
        this.banks = banks;
        this.reviews = reviews;
        this.audit = audit;
    }

    /** Everything that stands against an import, a sentence each. */
    static final class ConflictException extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final transient List<String> conflicts;

        ConflictException(List<String> conflicts) {
            super(String.join(" ", conflicts));
            this.conflicts = List.copyOf(conflicts);
        }

        List<String> conflicts() {
            return conflicts;
        }
    }

    @Transactional(readOnly = true)
    public String write(UUID projectId) {
        Map<String, List<Map<String, Object>>> tables = reader.rows(projectId);
        Set<UUID> ids = new TreeSet<>();
        tables.values().forEach(rows -> rows.forEach(row -> people(row).forEach(id -> ids.add(UUID.fromString(id)))));
        Map<String, ProjectFile.Person> people = new TreeMap<>();
        for (UUID id : ids) {
            jdbc.sql("select user_name, display_name from person where id = :id").param("id", id)
                    .query((row, index) -> new ProjectFile.Person(row.getString("user_name"), row.getString("display_name")))
                    .optional().ifPresent(person -> people.put(id.toString(), Elsewhere.there(id, person)));
        }
        return CanonicalJson.write(new ProjectFile(ProjectFile.KIND, ProjectFile.FORMAT, people, tables));
    }

    /**
     * @return id of the project
     * @throws ConflictException        with every reason why nothing was stored
     * @throws IllegalArgumentException when the bytes are no such file
     */
    @PreAuthorize(May.ADMINISTER)
    @Transactional
    public UUID read(byte[] bytes, CurrentPerson person) {
        ProjectFile file = CanonicalJson.read(new String(bytes, StandardCharsets.UTF_8), ProjectFile.class);
        requireShape(file);
        List<String> conflicts = new ArrayList<>();
        file.people().forEach((id, named) -> addPerson(UUID.fromString(id), named));
        Map<ProjectTable, List<Map<String, Object>>> fresh = new LinkedHashMap<>();
        for (ProjectTable table : ProjectTable.values()) {
            fresh.put(table, check(table, file.tables().getOrDefault(table.sqlName(), List.of()), conflicts));
        }
        conflicts.addAll(OriginLines.conflicts(fresh.get(ProjectTable.ORIGIN_AUDIT_EVENT)));
        List<Map<String, Object>> projects = fresh.get(ProjectTable.PROJECT);
        if (projects.size() != 1 && conflicts.isEmpty()) {
            conflicts.add("This project is here already.");
        }
        if (!conflicts.isEmpty()) {
            throw new ConflictException(conflicts);
        }
        try {
            fresh.forEach((table, rows) -> rows.forEach(row -> insert(table, row)));
            fresh.get(ProjectTable.PART).forEach(this::setReplacement);
        } catch (DataIntegrityViolationException e) {
            throw new ConflictException(List.of("The rows of the file do not belong together: " + reason(e)));
        }
        requireSignatures(fresh.get(ProjectTable.BANK_REVISION));
        UUID projectId = (UUID) projects.get(0).get("id");
        audit.record(person.userName(), "project imported", "project", projectId.toString(),
                Map.of("name", projects.get(0).get("name"), "sha256", Sha256.of(bytes)));
        return projectId;
    }

    private static String reason(DataIntegrityViolationException e) {
        return e.getMostSpecificCause().getMessage().lines().findFirst().orElse("");
    }

    private static void requireShape(ProjectFile file) {
        if (!ProjectFile.KIND.equals(file.kind()) || file.format() != ProjectFile.FORMAT || file.tables() == null || file.people() == null) {
            throw new IllegalArgumentException("This is no project file of format " + ProjectFile.FORMAT);
        }
        for (String name : file.tables().keySet()) {
            if (Arrays.stream(ProjectTable.values()).noneMatch(table -> table.sqlName().equals(name))) {
                throw new IllegalArgumentException("A project has no table '" + name + "'");
            }
        }
    }

    /** Rows that are not here yet, as values; what is wrong with any goes to the conflicts. */
    private List<Map<String, Object>> check(ProjectTable table, List<Map<String, Object>> rows, List<String> conflicts) {
        Map<String, Cells.Type> columns = reader.columns(table);
        List<Map<String, Object>> fresh = new ArrayList<>();
        for (Map<String, Object> row : rows) {
            Map<String, Object> values = new HashMap<>();
            for (Map.Entry<String, Object> cell : row.entrySet()) {
                Cells.Type type = columns.get(cell.getKey());
                if (type == null) {
                    throw new IllegalArgumentException("Table " + table.sqlName() + " has no column '" + cell.getKey() + "' in this installation");
                }
                values.put(cell.getKey(), Cells.value(type, table.sqlName() + "." + cell.getKey(), cell.getValue()));
            }
            checkHash(table, values, conflicts);
            Map<String, Object> here = reader.find(table, values);
            if (here == null) {
                checkName(table, values, conflicts);
                checkChain(table, values, conflicts);
                fresh.add(values);
            } else if (!same(table, here, row)) {
                conflicts.add(what(table, row) + " is here already and says something else.");
            }
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

    /** Names that are unique in an installation. */
    private void checkName(ProjectTable table, Map<String, Object> values, List<String> conflicts) {
        String column = table == ProjectTable.PART ? "part_number" : table == ProjectTable.PROJECT ? "name" : null;
        if (column != null && jdbc.sql("select count(*) from " + table.sqlName() + " where " + column + " = :name")
                .param("name", values.get(column)).query(Integer.class).single() > 0) {
            conflicts.add((table == ProjectTable.PART ? "Part " : "A project ") + "'" + values.get(column)
                    + "' is here already, with another origin. Rename one of the two.");
        }
        if (table == ProjectTable.PART_REVISION && reader.find(ProjectTable.PART, Map.of("id", values.get("subject_id"))) != null) {
            conflicts.add("Revision " + values.get("number") + " of a part that is here already is not here: bring the library up to date first.");
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

    /**
     * A part comes in as proposed, for vetting is this team's own, and with what replaced it there, once all parts are in. A fixture
     * sweep whose name is taken gets another one.
     */
    private void insert(ProjectTable table, Map<String, Object> values) {
        Map<String, Object> row = new LinkedHashMap<>(values);
        if (table == ProjectTable.PART) {
            String there = String.valueOf(row.get("vetting")).toLowerCase(Locale.ROOT);
            row.put("vetting", "PROPOSED");
            row.put("vetting_reason", "imported; it was " + there + " there");
            row.remove("replacement_id");
        }
        if (table == ProjectTable.FIXTURE_SWEEP && isTaken(row.get("name"))) {
            row.put("name", Elsewhere.here((UUID) row.get("id"), (String) row.get("name")));
        }
        StringJoiner names = new StringJoiner(", ");
        StringJoiner places = new StringJoiner(", ");
        row.keySet().forEach(column -> {
            names.add(column);
            places.add(":" + column);
        });
        jdbc.sql("insert into " + table.sqlName() + " (" + names + ") values (" + places + ")").params(row).update();
    }

    private void setReplacement(Map<String, Object> part) {
        if (part.get("replacement_id") != null) {
            jdbc.sql("update part set replacement_id = :replacement where id = :id")
                    .param("replacement", part.get("replacement_id")).param("id", part.get("id")).update();
        }
    }

    private boolean isTaken(Object fixtureName) {
        return jdbc.sql("select count(*) from fixture_sweep where name = :name").param("name", fixtureName).query(Integer.class).single() > 0;
    }

    /** Somebody who is not known here becomes a name without an account that could sign in. */
    private void addPerson(UUID id, ProjectFile.Person person) {
        if (jdbc.sql("select count(*) from person where id = :id").param("id", id).query(Integer.class).single() > 0) {
            return;
        }
        ProjectFile.Person here = Elsewhere.here(id, person);
        jdbc.sql("""
                        insert into person (id, user_name, display_name, password_hash, password_change_due, active, created_at)
                        values (:id, :userName, :displayName, '!', true, false, current_timestamp)""")
                .param("id", id)
                .param("userName", here.userName())
                .param("displayName", here.displayName())
                .update();
    }

    private void requireSignatures(List<Map<String, Object>> revisions) {
        List<String> broken = new ArrayList<>();
        for (Map<String, Object> revision : revisions) {
            UUID id = (UUID) revision.get("id");
            if (reviews.of(banks.requireRevision(id)).signatures().stream().anyMatch(signature -> !signature.holds())) {
                broken.add("A signature under bank revision " + id + " does not hold: the file was changed.");
            }
        }
        if (!broken.isEmpty()) {
            throw new ConflictException(broken);
        }
    }

    private static List<String> people(Map<String, Object> row) {
        return row.entrySet().stream()
                .filter(cell -> PERSON_COLUMNS.contains(cell.getKey()))
                .map(cell -> (String) cell.getValue()).toList();
    }
}
