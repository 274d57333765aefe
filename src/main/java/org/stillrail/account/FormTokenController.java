package org.stillrail.account;

import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ResponseBody;

/**
 * The form token of the present session. A page that was opened in an earlier session asks for it after its owner has signed in
 * again elsewhere, so that what was typed can still be sent.
 */
@Controller
class FormTokenController {

    /** The names under which the token is sent, and the token. */
    record FormToken(String headerName, String parameterName, String token) {}

    @GetMapping("/form-token")
    @ResponseBody
    @PreAuthorize(May.READ)
    FormToken formToken(CsrfToken token) {
        return new FormToken(token.getHeaderName(), token.getParameterName(), token.getToken());
    }
}
