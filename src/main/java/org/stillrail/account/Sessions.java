package org.stillrail.account;

import java.util.Set;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.stereotype.Component;

/** Ends a person's sessions when what they were opened with no longer holds. */
@Component
class Sessions {

    private final FindByIndexNameSessionRepository<?> repository;

    Sessions(FindByIndexNameSessionRepository<?> repository) {
        this.repository = repository;
    }

    void end(String userName) {
        Set.copyOf(repository.findByPrincipalName(userName).keySet()).forEach(repository::deleteById);
    }
}
