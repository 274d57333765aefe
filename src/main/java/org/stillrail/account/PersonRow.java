package org.stillrail.account;

import java.util.UUID;

/** A person as the administrator's pages show them. */
record PersonRow(UUID id, String userName, String displayName, String roles, boolean active) {

    static PersonRow of(Person person) {
        return new PersonRow(
                person.id(), person.userName(), person.displayName(), RoleLabels.of(person.roles()), person.active());
    }
}
