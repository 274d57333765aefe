package org.stillrail.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Everyone who has or had an account. */
@Repository
public class People {

    private static final String WITH_ROLES = """
            select p.*, (select string_agg(r.role, ',') from person_role r where r.person_id = p.id) as roles
            from person p
            """;

    private final JdbcClient jdbc;

    People(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    public Optional<Person> byId(UUID id) {
        return jdbc.sql(WITH_ROLES + "where p.id = :id").param("id", id).query(People::person).optional();
    }

    public Optional<Person> byUserName(String userName) {
        return jdbc.sql(WITH_ROLES + "where p.user_name = :userName").param("userName", UserName.normal(userName))
                .query(People::person).optional();
    }

    /** Everyone, by display name; those who left as well. */
    public List<Person> all() {
        return jdbc.sql(WITH_ROLES + "order by p.display_name, p.user_name").query(People::person).list();
    }

    /** Those who are active and hold the role, by display name. */
    public List<Person> withRole(Role role) {
        return all().stream().filter(person -> person.active() && person.has(role)).toList();
    }

    boolean none() {
        return jdbc.sql("select count(*) from person").query(Long.class).single() == 0;
    }

    Optional<CurrentPerson> forSignIn(String userName, Instant now) {
        return jdbc.sql(WITH_ROLES + "where p.user_name = :userName").param("userName", userName)
                .query((row, index) -> {
                    OffsetDateTime until = row.getObject("locked_until", OffsetDateTime.class);
                    boolean locked = until != null && until.toInstant().isAfter(now);
                    return new CurrentPerson(
                            person(row, index), row.getBoolean("password_change_due"), locked, row.getString("password_hash"));
                })
                .optional();
    }

    void insert(Person person, String passwordHash, boolean passwordChangeDue, Instant now) {
        jdbc.sql("""
                        insert into person (id, user_name, display_name, password_hash, password_change_due, active, created_at)
                        values (:id, :userName, :displayName, :passwordHash, :changeDue, :active, :now)""")
                .param("id", person.id())
                .param("userName", person.userName())
                .param("displayName", person.displayName())
                .param("passwordHash", passwordHash)
                .param("changeDue", passwordChangeDue)
                .param("active", person.active())
                .param("now", now.atOffset(ZoneOffset.UTC))
                .update();
        setRoles(person.id(), person.roles());
    }

    void setRoles(UUID id, Collection<Role> roles) {
        jdbc.sql("delete from person_role where person_id = :id").param("id", id).update();
        for (Role role : roles) {
            jdbc.sql("insert into person_role (person_id, role) values (:id, :role)")
                    .param("id", id).param("role", role.name()).update();
        }
    }

    /** The roles as they are, held for this transaction. */
    Set<Role> rolesForChange(UUID id) {
        jdbc.sql("select id from person where id = :id for update").param("id", id).query(UUID.class).single();
        return byId(id).orElseThrow().roles();
    }

    void setActive(UUID id, boolean active) {
        jdbc.sql("update person set active = :active where id = :id").param("active", active).param("id", id).update();
    }

    void setPassword(UUID id, String passwordHash, boolean changeDue) {
        jdbc.sql("""
                        update person set password_hash = :hash, password_change_due = :due, failed_sign_ins = 0, locked_until = null
                        where id = :id""")
                .param("hash", passwordHash).param("due", changeDue).param("id", id).update();
    }

    String passwordHash(UUID id) {
        return jdbc.sql("select password_hash from person where id = :id").param("id", id).query(String.class).single();
    }

    /** Counts a failure in a row; from the {@code limit}th on, the account pauses until the given time. */
    boolean countFailure(String userName, int limit, Instant pauseUntil) {
        jdbc.sql("""
                        update person set failed_sign_ins = failed_sign_ins + 1,
                            locked_until = case when failed_sign_ins + 1 >= :limit then cast(:until as timestamp with time zone)
                                else locked_until end
                        where user_name = :userName""")
                .param("limit", limit)
                .param("until", pauseUntil.atOffset(ZoneOffset.UTC))
                .param("userName", userName)
                .update();
        return jdbc.sql("select failed_sign_ins from person where user_name = :userName").param("userName", userName)
                .query(Integer.class).optional().orElse(0) >= limit;
    }

    void forgetFailures(UUID id) {
        jdbc.sql("update person set failed_sign_ins = 0, locked_until = null where id = :id and failed_sign_ins > 0")
                .param("id", id).update();
    }

    private static Person person(ResultSet row, int index) throws SQLException {
        return new Person(
                row.getObject("id", UUID.class), row.getString("user_name"), row.getString("display_name"),
                roles(row.getString("roles")), row.getBoolean("active"));
    }

    private static Set<Role> roles(String joined) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        if (joined != null) {
            for (String role : joined.split(",")) {
                roles.add(Role.valueOf(role));
            }
        }
        return roles;
    }
}
