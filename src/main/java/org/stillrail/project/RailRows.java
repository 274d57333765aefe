package org.stillrail.project;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.account.CurrentPerson;
import org.stillrail.document.Revision;
import org.stillrail.document.RevisionTable;
import org.stillrail.electrical.requirement.RailFigures;

/** Stored rails and their revisions. */
@Repository
class RailRows {

    private final JdbcClient jdbc;
    private final RevisionTable<RailDocument> revisions;

    RailRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.revisions = new RevisionTable<>(jdbc, "rail_revision", RailDocument.class);
    }

    List<Rail> ofProject(UUID projectId) {
        return ofProjects(List.of(projectId));
    }

    /** Newest revisions of the rails of several projects, by name. */
    List<Rail> ofProjects(List<UUID> projectIds) {
        if (projectIds.isEmpty()) {
            return List.of();
        }
        return jdbc.sql("""
                        select v.*, r.project_id, r.name, r.latest_number, r.version from rail r
                        join rail_revision v on v.subject_id = r.id and v.number = r.latest_number
                        where r.project_id in (:projectIds) order by r.name""")
                .param("projectIds", projectIds)
                .query((row, index) -> rail(revisions.map(row, index), row))
                .list();
    }

    Optional<Rail> find(UUID id) {
        return revisions.latest(id).flatMap(this::withRail);
    }

    Optional<Rail> find(UUID id, int number) {
        return revisions.find(id, number).flatMap(this::withRail);
    }

    Optional<Rail> findRevision(UUID revisionId) {
        return revisions.find(revisionId).flatMap(this::withRail);
    }

    List<Revision<RailDocument>> history(UUID id) {
        return revisions.all(id);
    }

    Rail insert(UUID projectId, String name, RailDocument document, CurrentPerson author, OffsetDateTime at) {
        UUID id = UUID.randomUUID();
        jdbc.sql("insert into rail (id, project_id, name, latest_number, version) values (:id, :projectId, :name, 1, 0)")
                .param("id", id)
                .param("projectId", projectId)
                .param("name", name)
                .update();
        return new Rail(id, projectId, name, 1, 0, insertRevision(id, 1, document, author, at));
    }

    /** The next revision, unless somebody else changed the rail since. */
    boolean addRevision(Rail rail, RailDocument document, CurrentPerson author, OffsetDateTime at) {
        int number = rail.latestNumber() + 1;
        int changed = jdbc.sql("update rail set latest_number = :number, version = version + 1 where id = :id and version = :version")
                .param("number", number)
                .param("id", rail.id())
                .param("version", rail.version())
                .update();
        if (changed == 0) {
            return false;
        }
        insertRevision(rail.id(), number, document, author, at);
        return true;
    }

    private Revision<RailDocument> insertRevision(UUID id, int number, RailDocument document, CurrentPerson author, OffsetDateTime at) {
        RailFigures figures = document.figures();
        Map<String, Object> search = new HashMap<>();
        search.put("nominal_voltage_v", figures.nominalVoltageV());
        search.put("nominal_current_a", figures.nominalCurrentA());
        search.put("switching_hz", figures.converter().switchingHz());
        search.put("load_step_a", figures.loadStep() == null ? null : Math.abs(figures.loadStep().toA() - figures.loadStep().fromA()));
        return revisions.insert(id, number, author.id(), author.displayName(), at, document, search);
    }

    private Optional<Rail> withRail(Revision<RailDocument> revision) {
        return jdbc.sql("select project_id, name, latest_number, version from rail where id = :id")
                .param("id", revision.subjectId())
                .query((row, index) -> rail(revision, row))
                .optional();
    }

    private static Rail rail(Revision<RailDocument> revision, ResultSet row) throws SQLException {
        return new Rail(revision.subjectId(), row.getObject("project_id", UUID.class), row.getString("name"), row.getInt("latest_number"),
                row.getLong("version"), revision);
    }
}
