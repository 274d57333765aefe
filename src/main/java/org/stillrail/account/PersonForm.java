package org.stillrail.account;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.springframework.util.MultiValueMap;
import org.stillrail.web.Form;

/** Reads the fields that describe a person; what is wrong is noted in the form. */
final class PersonForm {

    static final int LONGEST_NAME = 80;

    private PersonForm() {}

    static String userName(Form form) {
        return form.read("userName", "The user name", true, UserName::checked);
    }

    static String displayName(Form form) {
        String name = form.text("displayName", "The name", true);
        if (name != null && name.length() > LONGEST_NAME) {
            form.errors().add("displayName", "The name is longer than " + LONGEST_NAME + " characters");
        }
        return name;
    }

    /** Reads every value of {@code roles}; one is needed. */
    static Set<Role> roles(Form form, MultiValueMap<String, String> parameters) {
        Set<Role> roles = each("roles", form, parameters);
        if (roles.isEmpty()) {
            form.errors().add("roles", "A person needs at least one role");
        }
        return roles;
    }

    /** The roles that the page showed when it was opened. */
    static Set<Role> seen(Form form, MultiValueMap<String, String> parameters) {
        return each("seen", form, parameters);
    }

    private static Set<Role> each(String field, Form form, MultiValueMap<String, String> parameters) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        for (String typed : parameters.getOrDefault(field, List.of())) {
            try {
                roles.add(Role.valueOf(typed));
            } catch (IllegalArgumentException unknown) {
                form.errors().add("roles", "There is no such role");
            }
        }
        return roles;
    }
}
