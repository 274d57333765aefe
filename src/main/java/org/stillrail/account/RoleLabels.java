package org.stillrail.account;

import java.util.Collection;
import java.util.stream.Collectors;

/** Roles in words, in their fixed order. */
final class RoleLabels {

    private RoleLabels() {}

    static String of(Collection<Role> roles) {
        return roles.stream().sorted().map(Role::label).collect(Collectors.joining(", "));
    }
}
