package org.stillrail.account;

import java.time.Instant;
import java.util.EnumSet;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Somebody who may write rows, for the data-layer suites of the rooms above. */
public final class StoredPerson {

    private StoredPerson() {
    }

    /** Stored anew at each call. */
    public static CurrentPerson with(JdbcClient jdbc, Role role, Role... more) {
        UUID id = UUID.randomUUID();
        Person person = new Person(id, "p-" + id, "Person " + id.toString().substring(0, 8), EnumSet.of(role, more), true);
        new People(jdbc).insert(person, "no password", false, Instant.parse("2031-01-02T03:04:05Z"));
        return CurrentPerson.of(person);
    }
}
