package org.stillrail.account;

import java.util.Collection;
import java.util.Map;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.oauth2.core.OAuth2AuthenticatedPrincipal;

/** Carries the person from the token check to the request, in the form that the bearer-token filter wants. */
record TokenPrincipal(CurrentPerson person) implements OAuth2AuthenticatedPrincipal {

    @Override
    public Map<String, Object> getAttributes() {
        return Map.of();
    }

    @Override
    public Collection<? extends GrantedAuthority> getAuthorities() {
        return person.getAuthorities();
    }

    @Override
    public String getName() {
        return person.userName();
    }
}
