package org.stillrail.account;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.stereotype.Component;
import org.stillrail.audit.AuditTrail;

/** Notes the sign-in and leads on to the page that was asked for. */
@Component
class SignInSucceeded extends SavedRequestAwareAuthenticationSuccessHandler {

    private final People people;
    private final AuditTrail audit;

    SignInSucceeded(People people, AuditTrail audit) {
        this.people = people;
        this.audit = audit;
    }

    @Override
    public void onAuthenticationSuccess(HttpServletRequest request, HttpServletResponse response, Authentication signedIn)
            throws IOException, ServletException {
        CurrentPerson person = (CurrentPerson) signedIn.getPrincipal();
        people.forgetFailures(person.id());
        audit.record(person.userName(), "signed in", "person", person.userName(), Map.of());
        super.onAuthenticationSuccess(request, response, signedIn);
    }
}
