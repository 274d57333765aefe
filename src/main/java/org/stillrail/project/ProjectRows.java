package org.stillrail.project;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.account.Role;

/** Stored projects and who belongs to them. */
@Repository
class ProjectRows {

    /** Of {@code :pattern}, on lower-case text. */
    private static final String WHERE = " where lower(name) like :pattern escape '!' or lower(purpose) like :pattern escape '!' ";

    private final JdbcClient jdbc;

    ProjectRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void insert(Project project) {
        jdbc.sql("""
                        insert into project (id, name, purpose, created_by, created_at, version)
                        values (:id, :name, :purpose, :createdBy, :createdAt, 0)""")
                .param("id", project.id())
                .param("name", project.name())
                .param("purpose", project.purpose())
                .param("createdBy", project.createdBy())
                .param("createdAt", project.createdAt())
                .update();
    }

    List<Project> all() {
        return jdbc.sql("select * from project order by name").query(ProjectRows::map).list();
    }

    /** One page of those whose name or purpose holds the pattern, by name. */
    List<Project> list(String pattern, int offset, int most) {
        return jdbc.sql("select * from project" + WHERE + "order by name offset :offset rows fetch next :most rows only")
                .param("pattern", pattern)
                .param("offset", offset)
                .param("most", most)
                .query(ProjectRows::map)
                .list();
    }

    int count(String pattern) {
        return jdbc.sql("select count(*) from project" + WHERE).param("pattern", pattern).query(Integer.class).single();
    }

    Optional<Project> find(UUID id) {
        return jdbc.sql("select * from project where id = :id").param("id", id).query(ProjectRows::map).optional();
    }

    int signatures(UUID projectId) {
        return jdbc.sql("select signatures from project where id = :id").param("id", projectId).query(Integer.class).single();
    }

    void setSignatures(UUID projectId, int signatures) {
        jdbc.sql("update project set signatures = :signatures where id = :id").param("signatures", signatures).param("id", projectId).update();
    }

    /** Counts the changes of members and of what is asked of reviewers. */
    long version(UUID projectId) {
        return jdbc.sql("select version from project where id = :id").param("id", projectId).query(Long.class).single();
    }

    /** False where somebody else was faster. */
    boolean moveOn(UUID projectId, long version) {
        return jdbc.sql("update project set version = version + 1 where id = :id and version = :version")
                .param("id", projectId).param("version", version).update() == 1;
    }

    /** Of those that a person works in, by name. */
    List<OwnProject> ofMember(UUID personId, int most) {
        return jdbc.sql("""
                        select p.id, p.name from project_member m join project p on p.id = m.project_id
                        where m.person_id = :personId order by p.name, p.id fetch first :most rows only""")
                .param("personId", personId)
                .param("most", most)
                .query((row, index) -> new OwnProject(row.getObject("id", UUID.class), row.getString("name")))
                .list();
    }

    List<Member> members(UUID projectId) {
        return jdbc.sql("""
                        select p.id, p.display_name from project_member m join person p on p.id = m.person_id
                        where m.project_id = :projectId order by p.display_name""")
                .param("projectId", projectId)
                .query((row, index) -> new Member(row.getObject("id", UUID.class), row.getString("display_name")))
                .list();
    }

    boolean isMember(UUID projectId, UUID personId) {
        return jdbc.sql("select count(*) from project_member where project_id = :projectId and person_id = :personId")
                .param("projectId", projectId)
                .param("personId", personId)
                .query(Integer.class)
                .single() > 0;
    }

    /** Whether a member can sign in and is an engineer. */
    boolean hasEditor(UUID projectId) {
        return jdbc.sql("""
                        select count(*) from project_member m join person p on p.id = m.person_id join person_role r on r.person_id = p.id
                        where m.project_id = :projectId and p.active and r.role = :role""")
                .param("projectId", projectId)
                .param("role", Role.ENGINEER.name())
                .query(Integer.class)
                .single() > 0;
    }

    void addMember(UUID projectId, UUID personId) {
        jdbc.sql("insert into project_member (project_id, person_id) values (:projectId, :personId) on conflict do nothing")
                .param("projectId", projectId)
                .param("personId", personId)
                .update();
    }

    void removeMember(UUID projectId, UUID personId) {
        jdbc.sql("delete from project_member where project_id = :projectId and person_id = :personId")
                .param("projectId", projectId)
                .param("personId", personId)
                .update();
    }

    private static Project map(ResultSet row, int index) throws SQLException {
        return new Project(
                row.getObject("id", UUID.class),
                row.getString("name"),
                row.getString("purpose"),
                row.getString("created_by"),
                row.getObject("created_at", OffsetDateTime.class));
    }
}
