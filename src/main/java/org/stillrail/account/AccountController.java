package org.stillrail.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.web.Form;
import org.stillrail.web.NotFoundException;

/** One's own account: password and API tokens. */
@Controller
@PreAuthorize(May.READ)
class AccountController {

    private static final int LONGEST_TOKEN_NAME = 60;

    private final Accounts accounts;
    private final Tokens tokens;

    AccountController(Accounts accounts, Tokens tokens) {
        this.accounts = accounts;
        this.tokens = tokens;
    }

    @GetMapping("/account")
    ModelAndView show(@AuthenticationPrincipal CurrentPerson person) {
        return page(person, Form.empty(), HttpStatus.OK);
    }

    @GetMapping("/account/password")
    ModelAndView password(@AuthenticationPrincipal CurrentPerson person) {
        return passwordPage(person, Form.empty(), HttpStatus.OK);
    }

    /** All sessions end with the change, this one too: the new password is tried out at once. */
    @PostMapping("/account/password")
    ModelAndView changePassword(
            @AuthenticationPrincipal CurrentPerson person, @RequestParam MultiValueMap<String, String> parameters,
            HttpServletRequest request) {
        Form form = Form.of(parameters);
        if (form.isBlank("current")) {
            form.errors().add("current", "The current password is missing");
        }
        String wanted = PasswordRules.read(form, person.userName());
        if (form.errors().none() && wanted.equals(form.get("current"))) {
            form.errors().add("password", "The new password must differ from the current one");
        }
        if (form.errors().none() && !accounts.changePassword(person, form.get("current"), wanted)) {
            form.errors().add("current", "This is not your current password");
        }
        if (!form.errors().none()) {
            return passwordPage(person, form, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        HttpSession session = request.getSession(false);
        if (session != null) {
            session.invalidate();
        }
        return new ModelAndView("redirect:/sign-in?changed");
    }

    /** Answers with the page itself and not with a redirect, so that the token is never put into the session. */
    @PostMapping("/account/tokens")
    ModelAndView makeToken(
            @AuthenticationPrincipal CurrentPerson person, @RequestParam MultiValueMap<String, String> parameters) {
        Form form = Form.of(parameters);
        String name = form.text("name", "The name", true);
        if (name != null && name.length() > LONGEST_TOKEN_NAME) {
            form.errors().add("name", "The name is longer than " + LONGEST_TOKEN_NAME + " characters");
        }
        if (!form.errors().none()) {
            return page(person, form, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        String token = accounts.makeToken(person, name);
        return page(person, Form.empty(), HttpStatus.OK).addObject("newToken", token);
    }

    @PostMapping("/account/tokens/{id}/revoke")
    String revokeToken(@AuthenticationPrincipal CurrentPerson person, @PathVariable UUID id, RedirectAttributes redirect) {
        TokenRow token = tokens.byId(id).filter(row -> row.personId().equals(person.id()))
                .orElseThrow(() -> new NotFoundException("You have no such token"));
        accounts.revokeToken(token, person.userName());
        redirect.addFlashAttribute("notice", "The token '" + token.name() + "' no longer works.");
        return "redirect:/account";
    }

    private ModelAndView page(CurrentPerson person, Form form, HttpStatus status) {
        return new ModelAndView("account/account", status)
                .addObject("person", person)
                .addObject("roleLabels", RoleLabels.of(person.roles()))
                .addObject("tokens", tokens.of(person.id()))
                .addObject("form", form)
                .addObject("errors", form.errors());
    }

    private static ModelAndView passwordPage(CurrentPerson person, Form form, HttpStatus status) {
        return new ModelAndView("account/password", status)
                .addObject("due", person.passwordChangeDue())
                .addObject("form", form)
                .addObject("errors", form.errors());
    }
}
