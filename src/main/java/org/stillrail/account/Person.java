package org.stillrail.account;

import java.util.Set;
import java.util.UUID;

/**
 * Someone with an account.
 *
 * @param userName what they sign in with, lower case
 * @param displayName what pages show
 * @param roles one or more
 * @param active false once they have left; their name stays beside what they did
 */
public record Person(UUID id, String userName, String displayName, Set<Role> roles, boolean active) {

    public Person {
        roles = Set.copyOf(roles);
    }

    public boolean has(Role role) {
        return roles.contains(role);
    }
}
