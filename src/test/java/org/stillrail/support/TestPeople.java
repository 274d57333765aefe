package org.stillrail.support;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.stillrail.account.Accounts;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;

/**
 * Invented people with one role each, stored once per context. On a page: {@code mvc.perform(get("/library").with(people.as(
 * Role.ENGINEER)))}, with {@code csrf()} for a POST. On the API: header {@code Authorization: Bearer} and {@link #token}.
 */
public final class TestPeople {

    /** Of everyone made here. */
    public static final String PASSWORD = "four plain words here";

    private final Accounts accounts;
    private final Map<Set<Role>, CurrentPerson> people = new ConcurrentHashMap<>();
    private final Map<Role, String> tokens = new ConcurrentHashMap<>();

    TestPeople(Accounts accounts) {
        this.accounts = accounts;
    }

    /** Someone with exactly these roles, stored; always the same one. */
    public CurrentPerson with(Role role, Role... more) {
        Set<Role> roles = EnumSet.of(role, more);
        return people.computeIfAbsent(Set.copyOf(roles), this::make);
    }

    /** A new person who holds every role and signs in with {@link #PASSWORD}. */
    public static CurrentPerson ofEveryRole(Accounts accounts, String displayName) {
        return accounts.add("all-" + UUID.randomUUID().toString().substring(0, 8), displayName, EnumSet.allOf(Role.class), PASSWORD, "tests");
    }

    /** Another person with this role, stored anew at each call. */
    public CurrentPerson another(Role role) {
        return make(Set.of(role));
    }

    /** Acts as the person of this role in MockMvc. */
    public RequestPostProcessor as(Role role, Role... more) {
        return as(with(role, more));
    }

    public RequestPostProcessor as(CurrentPerson person) {
        return user(person);
    }

    /** A token of the person of this role; always the same one. */
    public String token(Role role) {
        return tokens.computeIfAbsent(role, r -> accounts.makeToken(with(r), "tests"));
    }

    private CurrentPerson make(Set<Role> roles) {
        String userName = "test-" + UUID.randomUUID().toString().substring(0, 13);
        return accounts.add(userName, "Test " + roles, roles, PASSWORD, "tests");
    }
}
