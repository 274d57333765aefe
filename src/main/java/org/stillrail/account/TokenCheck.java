package org.stillrail.account;

import java.time.Clock;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.oauth2.core.OAuth2AuthenticatedPrincipal;
import org.springframework.security.oauth2.server.resource.introspection.BadOpaqueTokenException;
import org.springframework.security.oauth2.server.resource.introspection.OpaqueTokenIntrospector;
import org.springframework.stereotype.Component;

/** Finds whose token was presented; roles are read afresh at every call. */
@Component
class TokenCheck implements OpaqueTokenIntrospector {

    private final Tokens tokens;
    private final People people;
    private final Clock clock;

    TokenCheck(Tokens tokens, People people, Clock clock) {
        this.tokens = tokens;
        this.people = people;
        this.clock = clock;
    }

    @Override
    public OAuth2AuthenticatedPrincipal introspect(String token) {
        TokenRow row = tokens.presented(token).orElseThrow(() -> new BadOpaqueTokenException("The token is not known"));
        Person person = people.byId(row.personId()).filter(Person::active)
                .orElseThrow(() -> new BadOpaqueTokenException("The token is not known"));
        tokens.noteUse(row, clock.instant());
        return new TokenPrincipal(CurrentPerson.of(person));
    }

    /** The same kind of authentication as after a sign-in, so that controllers see no difference. */
    static Authentication authentication(String token, OAuth2AuthenticatedPrincipal principal) {
        CurrentPerson person = ((TokenPrincipal) principal).person();
        return UsernamePasswordAuthenticationToken.authenticated(person, null, person.getAuthorities());
    }
}
