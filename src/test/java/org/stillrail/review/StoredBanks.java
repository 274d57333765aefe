package org.stillrail.review;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.stillrail.bank.BankState;

/** Rows of the rooms below, as few columns of them as the review reads, for its data-layer suite. */
final class StoredBanks {

    static final OffsetDateTime MADE = OffsetDateTime.of(2031, 1, 2, 3, 4, 5, 0, ZoneOffset.UTC);

    private final JdbcClient jdbc;
    private final UUID rail = UUID.randomUUID();

    StoredBanks(JdbcClient jdbc) {
        this.jdbc = jdbc;
        UUID project = UUID.randomUUID();
        jdbc.sql("insert into project (id, name, purpose, created_by, created_at, version) values (:id, :name, 'p', 'c', :at, 0)")
                .param("id", project).param("name", "Project " + project).param("at", MADE).update();
        jdbc.sql("insert into rail (id, project_id, name, latest_number, version) values (:id, :project, 'Rail', 0, 0)")
                .param("id", rail).param("project", project).update();
        reviseRail();
    }

    UUID person() {
        UUID id = UUID.randomUUID();
        jdbc.sql("""
                        insert into person (id, user_name, display_name, password_hash, password_change_due, active, created_at)
                        values (:id, :name, :name, 'none', false, true, :at)""")
                .param("id", id).param("name", "p-" + id).param("at", MADE).update();
        return id;
    }

    void reviseRail() {
        jdbc.sql("update rail set latest_number = latest_number + 1 where id = :id").param("id", rail).update();
        jdbc.sql("""
                        insert into rail_revision (id, subject_id, number, author_id, author, made_at, document, sha256,
                            nominal_voltage_v, nominal_current_a, switching_hz)
                        select :id, id, latest_number, cast(:id as uuid), 'a', cast(:at as timestamp with time zone), '{}', 'x', 3.3, 1, 1
                        from rail where id = :rail""")
                .param("id", UUID.randomUUID()).param("at", MADE).param("rail", rail).update();
    }

    UUID bank(UUID owner) {
        UUID id = UUID.randomUUID();
        jdbc.sql("insert into bank (id, rail_id, owner_id, owner, name, latest_number, version) values (:id, :rail, :owner, 'o', :name, 0, 0)")
                .param("id", id).param("rail", rail).param("owner", owner).param("name", "Bank " + id).update();
        return id;
    }

    /** The next revision, saved against the newest revision of the rail. */
    UUID revision(UUID bank, UUID author, BankState state) {
        UUID id = UUID.randomUUID();
        jdbc.sql("update bank set latest_number = latest_number + 1 where id = :id").param("id", bank).update();
        jdbc.sql("""
                        insert into bank_revision (id, subject_id, number, author_id, author, made_at, document, sha256, rail_revision_id)
                        select :id, b.id, b.latest_number, cast(:author as uuid), 'Author', cast(:at as timestamp with time zone), '{}', 'x', v.id
                        from bank b join rail l on l.id = b.rail_id join rail_revision v on v.subject_id = l.id and v.number = l.latest_number
                        where b.id = :bank""")
                .param("id", id).param("author", author).param("at", MADE).param("bank", bank).update();
        jdbc.sql("insert into bank_revision_state (revision_id, state, version) values (:id, :state, 0)")
                .param("id", id).param("state", state.name()).update();
        return id;
    }

    void state(UUID revision, BankState state) {
        jdbc.sql("update bank_revision_state set state = :state where revision_id = :id").param("state", state.name()).param("id", revision).update();
    }

    void step(UUID revision, ReviewStep step, UUID person) {
        jdbc.sql("""
                        insert into review_step (revision_id, number, step, person_id, person, taken_at, remark)
                        select :revision, coalesce(max(number), 0) + 1, :step, cast(:person as uuid), 'Person',
                            cast(:at as timestamp with time zone), 'Remark' from review_step where revision_id = :revision""")
                .param("revision", revision).param("step", step.name()).param("person", person).param("at", MADE).update();
    }
}
