package org.stillrail.account;

import java.util.Set;
import java.util.UUID;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.web.Form;
import org.stillrail.web.NotFoundException;
import org.stillrail.web.StaleVersionException;

/** Where administrators look after people, their roles and their tokens. */
@Controller
@RequestMapping("/people")
@PreAuthorize(May.ADMINISTER)
class PeopleController {

    private final Accounts accounts;
    private final People people;
    private final Tokens tokens;

    PeopleController(Accounts accounts, People people, Tokens tokens) {
        this.accounts = accounts;
        this.people = people;
        this.tokens = tokens;
    }

    @GetMapping
    ModelAndView list() {
        return new ModelAndView("account/people").addObject("people", people.all().stream().map(PersonRow::of).toList());
    }

    @GetMapping("/new")
    ModelAndView showNew() {
        return newPage(Form.empty(), Set.of(), HttpStatus.OK);
    }

    /** Answers with the page itself and not with a redirect, so that the one-time password is never put into the session. */
    @PostMapping
    ModelAndView add(@AuthenticationPrincipal CurrentPerson actor, @RequestParam MultiValueMap<String, String> parameters) {
        Form form = Form.of(parameters);
        String userName = PersonForm.userName(form);
        String displayName = PersonForm.displayName(form);
        Set<Role> roles = PersonForm.roles(form, parameters);
        if (userName != null && people.byUserName(userName).isPresent()) {
            form.errors().add("userName", "This user name is taken");
        }
        if (form.errors().none()) {
            try {
                Accounts.Invitation invitation = accounts.invite(userName, displayName, roles, actor.userName());
                return personPage(invitation.person().id(), Form.empty(), HttpStatus.OK)
                        .addObject("oneTimePassword", invitation.oneTimePassword());
            } catch (DuplicateKeyException takenMeanwhile) {
                form.errors().add("userName", "This user name is taken");
            }
        }
        return newPage(form, roles, HttpStatus.UNPROCESSABLE_CONTENT);
    }

    @GetMapping("/{id}")
    ModelAndView show(@PathVariable UUID id) {
        return personPage(id, Form.empty(), HttpStatus.OK);
    }

    @PostMapping("/{id}/roles")
    ModelAndView changeRoles(
            @AuthenticationPrincipal CurrentPerson actor, @PathVariable UUID id,
            @RequestParam MultiValueMap<String, String> parameters, RedirectAttributes redirect) {
        Person person = person(id);
        Form form = Form.of(parameters);
        Set<Role> roles = PersonForm.roles(form, parameters);
        if (form.errors().none()) {
            try {
                accounts.changeRoles(person, PersonForm.seen(form, parameters), roles, actor.userName());
                redirect.addFlashAttribute("notice", person.displayName() + " is now " + RoleLabels.of(roles) + ".");
                return new ModelAndView("redirect:/people/" + id);
            } catch (LastAdministratorException last) {
                form.errors().add("roles", last.getMessage());
            } catch (StaleVersionException stale) {
                form.errors().add("roles", stale.getReason());
            }
        }
        return personPage(id, form, HttpStatus.UNPROCESSABLE_CONTENT).addObject("chosen", roles);
    }

    @PostMapping("/{id}/deactivate")
    ModelAndView deactivate(@AuthenticationPrincipal CurrentPerson actor, @PathVariable UUID id, RedirectAttributes redirect) {
        Person person = person(id);
        try {
            accounts.deactivate(person, actor.userName());
        } catch (LastAdministratorException last) {
            Form form = Form.empty();
            form.errors().add("", last.getMessage());
            return personPage(id, form, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        redirect.addFlashAttribute("notice", person.displayName() + " can no longer sign in.");
        return new ModelAndView("redirect:/people/" + id);
    }

    @PostMapping("/{id}/reactivate")
    String reactivate(@AuthenticationPrincipal CurrentPerson actor, @PathVariable UUID id, RedirectAttributes redirect) {
        Person person = person(id);
        accounts.reactivate(person, actor.userName());
        redirect.addFlashAttribute("notice", person.displayName() + " can sign in again.");
        return "redirect:/people/" + id;
    }

    @PostMapping("/{id}/password")
    ModelAndView resetPassword(@AuthenticationPrincipal CurrentPerson actor, @PathVariable UUID id) {
        String oneTime = accounts.resetPassword(person(id), actor.userName());
        return personPage(id, Form.empty(), HttpStatus.OK).addObject("oneTimePassword", oneTime);
    }

    @PostMapping("/{id}/tokens/{tokenId}/revoke")
    String revokeToken(
            @AuthenticationPrincipal CurrentPerson actor, @PathVariable UUID id, @PathVariable UUID tokenId,
            RedirectAttributes redirect) {
        TokenRow token = tokens.byId(tokenId).filter(row -> row.personId().equals(id))
                .orElseThrow(() -> new NotFoundException("This person has no such token"));
        accounts.revokeToken(token, actor.userName());
        redirect.addFlashAttribute("notice", "The token '" + token.name() + "' no longer works.");
        return "redirect:/people/" + id;
    }

    private Person person(UUID id) {
        return people.byId(id)
                .orElseThrow(() -> new NotFoundException("There is no such person"));
    }

    private ModelAndView personPage(UUID id, Form form, HttpStatus status) {
        Person person = person(id);
        return new ModelAndView("account/person", status)
                .addObject("person", PersonRow.of(person))
                .addObject("allRoles", Role.values())
                .addObject("chosen", person.roles())
                .addObject("seen", person.roles())
                .addObject("tokens", tokens.of(id))
                .addObject("form", form)
                .addObject("errors", form.errors());
    }

    private static ModelAndView newPage(Form form, Set<Role> chosen, HttpStatus status) {
        return new ModelAndView("account/person-new", status)
                .addObject("allRoles", Role.values())
                .addObject("chosen", chosen)
                .addObject("form", form)
                .addObject("errors", form.errors());
    }
}
