package org.stillrail.report;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.audit.AuditTrail;
import org.stillrail.bank.Banks;
import org.stillrail.document.CanonicalJson;
import org.stillrail.library.Library;
import org.stillrail.project.NameTakenException;
import org.stillrail.project.Projects;
import org.stillrail.review.ReviewRecords;

/**
 * Whole projects out and in. What comes in is held against what is here ({@link ProjectArrivals}) and every signature has to hold. All
 * is stored or nothing. Lines of the origin's record stay apart from this installation's chain, to which the import itself adds one
 * line, and one for each part that gains revisions.
 */
@Service
class ProjectFiles {

    private static final Set<String> PERSON_COLUMNS = Set.of("author_id", "person_id", "owner_id", "importer_id", "signer_id");

    private final ProjectRowsReader reader;
    private final ProjectArrivals arrivals;
    private final JdbcClient jdbc;
    private final Library library;
    private final Projects projects;
    private final Banks banks;
    private final ReviewRecords reviews;
    private final AuditTrail audit;
    private final PlatformTransactionManager transactions;
    private final Clock clock;

    ProjectFiles(
            ProjectRowsReader reader, ProjectArrivals arrivals, JdbcClient jdbc, Library library, Projects projects, Banks banks, ReviewRecords reviews,
            AuditTrail audit, PlatformTransactionManager transactions, Clock clock) {
        this.transactions = transactions;
        this.clock = clock;
        this.reader = reader;
        this.arrivals = arrivals;
        this.jdbc = jdbc;
        this.library = library;
        this.projects = projects;
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
     * Tries what {@link #take} would do, with the database's own checks and every signature, and stores nothing.
     *
     * @return what would come in, or what stands against it
     */
    @PreAuthorize(May.ADMINISTER)
    public Arrival look(ProjectFile file) {
        return new TransactionTemplate(transactions).execute(status -> {
            status.setRollbackOnly();
            Arrival arrival = arrivals.of(file);
            if (!arrival.conflicts().isEmpty()) {
                return arrival;
            }
            try {
                store(file, arrival, freeName(arrival));
                return arrival;
            } catch (ConflictException e) {
                return new Arrival(arrival.fresh(), arrival.later(), e.conflicts(), arrival.notes());
            }
        });
    }

    /** The project's name at home, with a tag where it is taken here. */
    public String freeName(Arrival arrival) {
        String there = arrival.projectName();
        return isProject(there) ? Elsewhere.here(arrival.projectId(), there) : there;
    }

    /** Whether a project here has this name. */
    public boolean isProject(String name) {
        return arrivals.isTaken(ProjectTable.PROJECT, "name", name);
    }

    /**
     * @param name     that the project gets here
     * @param asMember whether who takes it in, an engineer, becomes its member
     * @return id of the project
     * @throws NameTakenException       when a project here has this name
     * @throws ConflictException        with every reason why nothing was stored
     * @throws IllegalArgumentException when a cell is not what its column holds
     */
    @PreAuthorize(May.ADMINISTER)
    @Transactional
    public UUID take(ProjectFile.Received received, String name, boolean asMember, CurrentPerson person) {
        Arrival arrival = arrivals.of(received.file());
        if (!arrival.conflicts().isEmpty()) {
            throw new ConflictException(arrival.conflicts());
        }
        if (isProject(name)) {
            throw new NameTakenException("project", name);
        }
        store(received.file(), arrival, name);
        for (LaterRevisions part : arrival.later()) {
            audit.record(person.userName(), "part revisions imported", "part", part.partId().toString(), Map.of(
                    "partNumber", part.partNumber(), "revision", part.newest(), "after", part.here(), "sha256", received.sha256()));
        }
        audit.record(person.userName(), "project imported", "project", arrival.projectId().toString(),
                Map.of("name", name, "nameThere", arrival.projectName(), "sha256", received.sha256()));
        if (asMember) {
            projects.joinTakenIn(arrival.projectId(), person);
        }
        return arrival.projectId();
    }

    private void store(ProjectFile file, Arrival arrival, String name) {
        file.people().forEach((id, named) -> addPerson(UUID.fromString(id), named));
        try {
            arrival.fresh().forEach((table, rows) -> rows.forEach(row -> insert(table, row, name)));
            arrival.fresh().get(ProjectTable.PART).forEach(this::setReplacement);
        } catch (DataIntegrityViolationException e) {
            throw new ConflictException(List.of("The rows of the file do not belong together: " + reason(e)));
        }
        arrival.later().forEach(this::moveOn);
        requireReadable(arrival);
        requireSignatures(arrival.fresh().get(ProjectTable.BANK_REVISION));
    }

    private static String reason(DataIntegrityViolationException e) {
        return e.getMostSpecificCause().getMessage().lines().findFirst().orElse("");
    }

    /** A part comes in as proposed, for vetting is this team's own, and with what replaced it there, once all parts are in. */
    private void insert(ProjectTable table, Map<String, Object> values, String projectName) {
        Map<String, Object> row = new LinkedHashMap<>(values);
        if (table == ProjectTable.PART) {
            String there = String.valueOf(row.get("vetting")).toLowerCase(Locale.ROOT);
            row.put("vetting", "PROPOSED");
            row.put("vetting_reason", "imported; it was " + there + " there");
            row.remove("replacement_id");
        }
        if (table == ProjectTable.PROJECT) {
            row.put("name", projectName);
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

    /**
     * The newest of the revisions that came becomes the part's newest here. What a librarian vetted was another one, so such a part
     * is proposed again; a restriction or withdrawal stays.
     */
    private void moveOn(LaterRevisions part) {
        int moved = jdbc.sql("update part set latest_number = :newest, maker = :maker, version = version + 1 where id = :id and latest_number = :here")
                .param("newest", part.newest()).param("maker", part.maker()).param("id", part.partId()).param("here", part.here()).update();
        if (moved == 0) {
            throw new ConflictException(List.of("Part '" + part.partNumber() + "' was revised meanwhile: look at the file again."));
        }
        jdbc.sql("update part set vetting = 'PROPOSED', vetting_reason = :reason, vetting_changed_at = :at where id = :id and vetting = 'VETTED'")
                .param("reason", part.reason()).param("at", OffsetDateTime.now(clock)).param("id", part.partId()).update();
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

    /** What came is read as the pages will read it. */
    private void requireReadable(Arrival arrival) {
        arrival.fresh().get(ProjectTable.PART_REVISION).forEach(row -> library.findRevision((UUID) row.get("id")));
        arrival.fresh().get(ProjectTable.SWEEP).forEach(row -> library.findSweep((UUID) row.get("id")));
        arrival.fresh().get(ProjectTable.RAIL_REVISION).forEach(row -> projects.requireRailRevision((UUID) row.get("id")));
    }

    private void requireSignatures(List<Map<String, Object>> revisions) {
        List<String> broken = new ArrayList<>();
        for (Map<String, Object> revision : revisions) {
            UUID id = (UUID) revision.get("id");
            banks.requireRevision(id);
            if (!reviews.signaturesHold(id)) {
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
