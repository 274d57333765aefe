package org.stillrail.account;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import java.util.Objects;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.stereotype.Component;
import org.stillrail.audit.AuditTrail;

/** Writes down what a signed-in person tried and was refused. Strangers are not noted: anyone could fill the trail. */
@Component
class Refusals {

    private static final int LONGEST_PATH = 300;

    private final AuditTrail audit;

    Refusals(AuditTrail audit) {
        this.audit = audit;
    }

    void note(HttpServletRequest request, AccessDeniedException reason) {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        if (authentication == null || !(authentication.getPrincipal() instanceof CurrentPerson person)) {
            return;
        }
        String path = request.getRequestURI();
        audit.record(
                person.userName(), "refused", "request", path.substring(0, Math.min(LONGEST_PATH, path.length())),
                Map.of("method", request.getMethod(), "reason", reason instanceof CsrfException ? "form token"
                        : Objects.requireNonNullElse(sentence(reason), "role")));
    }

    /** What a room said when it refused, for the page; null where it was the roles alone. */
    static String sentence(AccessDeniedException reason) {
        return reason.getClass() == AccessDeniedException.class ? reason.getMessage() : null;
    }
}
