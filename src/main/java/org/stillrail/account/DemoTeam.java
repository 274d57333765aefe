package org.stillrail.account;

import java.util.function.Supplier;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;

/**
 * The invented people of the demo, by what they do.
 *
 * @param lead engineer and reviewer in one person
 */
public record DemoTeam(
        CurrentPerson viewer,
        CurrentPerson engineer,
        CurrentPerson librarian,
        CurrentPerson reviewer,
        CurrentPerson administrator,
        CurrentPerson lead) {

    /** Does something as this person: services that ask for a role see theirs. */
    public <T> T as(CurrentPerson person, Supplier<T> work) {
        SecurityContext before = SecurityContextHolder.getContext();
        SecurityContext during = SecurityContextHolder.createEmptyContext();
        during.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(person, null, person.getAuthorities()));
        SecurityContextHolder.setContext(during);
        try {
            return work.get();
        } finally {
            SecurityContextHolder.setContext(before);
        }
    }

    /** As {@link #as(CurrentPerson, Supplier)} for work without a result. */
    public void as(CurrentPerson person, Runnable work) {
        as(person, () -> {
            work.run();
            return null;
        });
    }
}
