package org.stillrail.account;

import java.time.Clock;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.stereotype.Component;

/** Finds the person who wants to sign in. */
@Component
class PersonDetails implements UserDetailsService {

    private final People people;
    private final Clock clock;

    PersonDetails(People people, Clock clock) {
        this.people = people;
        this.clock = clock;
    }

    @Override
    public UserDetails loadUserByUsername(String userName) {
        return people.forSignIn(UserName.normal(userName), clock.instant())
                .orElseThrow(() -> new UsernameNotFoundException("No such user name"));
    }
}
