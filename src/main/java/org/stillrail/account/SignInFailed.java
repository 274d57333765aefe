package org.stillrail.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.Map;
import org.springframework.security.authentication.LockedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.stereotype.Component;
import org.stillrail.audit.AuditTrail;

/**
 * Counts failures in a row. From the fifth on, the account pauses for a minute after each, so that a password cannot be found
 * by trying. The page says the same whatever the reason, so that nobody learns which names exist.
 */
@Component
class SignInFailed implements AuthenticationFailureHandler {

    static final int LIMIT = 5;
    static final Duration PAUSE = Duration.ofMinutes(1);
    /** Session attribute: the name that was typed, for the next showing of the form. */
    static final String TYPED_NAME = "signInName";
    private static final int LONGEST_NAME = 40;

    private final People people;
    private final AuditTrail audit;
    private final Clock clock;

    SignInFailed(People people, AuditTrail audit, Clock clock) {
        this.people = people;
        this.audit = audit;
        this.clock = clock;
    }

    @Override
    public void onAuthenticationFailure(
            HttpServletRequest request, HttpServletResponse response, AuthenticationException reason) throws IOException {
        String typed = request.getParameter("userName") == null ? "" : request.getParameter("userName");
        // A try during the pause neither counts nor fills the trail.
        if (!(reason instanceof LockedException)) {
            note(UserName.normal(typed));
        }
        request.getSession().setAttribute(TYPED_NAME, typed.substring(0, Math.min(LONGEST_NAME, typed.length())));
        response.sendRedirect(request.getContextPath() + "/sign-in?failed");
    }

    private void note(String userName) {
        // An unknown name is not written down: it may be a password typed into the wrong field.
        people.byUserName(userName).ifPresent(person -> {
            boolean paused = people.countFailure(userName, LIMIT, clock.instant().plus(PAUSE));
            audit.record(userName, "sign-in failed", "person", person.userName(), Map.of("paused", paused));
        });
    }
}
