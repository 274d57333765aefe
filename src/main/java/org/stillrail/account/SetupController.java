package org.stillrail.account;

import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.web.Form;

/** Makes the first administrator, with the code from the log; later there is nothing here. */
@Controller
class SetupController {

    private final Accounts accounts;
    private final People people;

    SetupController(Accounts accounts, People people) {
        this.accounts = accounts;
        this.people = people;
    }

    @GetMapping("/setup")
    ModelAndView show() {
        return people.none() ? page(Form.empty(), HttpStatus.OK) : new ModelAndView("redirect:/sign-in");
    }

    @PostMapping("/setup")
    ModelAndView setUp(@RequestParam MultiValueMap<String, String> parameters, RedirectAttributes redirect) {
        if (!people.none()) {
            return tooLate(redirect);
        }
        Form form = Form.of(parameters);
        String code = form.text("code", "The setup code", true);
        String userName = PersonForm.userName(form);
        String displayName = PersonForm.displayName(form);
        String password = PasswordRules.read(form, userName);
        if (!form.errors().none()) {
            return page(form, HttpStatus.UNPROCESSABLE_CONTENT);
        }
        return switch (accounts.setUp(code, userName, displayName, password)) {
            case DONE -> {
                redirect.addFlashAttribute("notice", "You are the first administrator: sign in.");
                yield new ModelAndView("redirect:/sign-in");
            }
            case TOO_LATE -> tooLate(redirect);
            case WRONG_CODE -> {
                form.errors().add("code", "This is not the code that the server printed last, or it was used before");
                yield page(form, HttpStatus.UNPROCESSABLE_CONTENT);
            }
        };
    }

    private static ModelAndView tooLate(RedirectAttributes redirect) {
        redirect.addFlashAttribute("notice", "There is an administrator already; ask them for an account.");
        return new ModelAndView("redirect:/sign-in");
    }

    private static ModelAndView page(Form form, HttpStatus status) {
        ModelAndView page = new ModelAndView("account/setup", status);
        page.addObject("form", form);
        page.addObject("errors", form.errors());
        return page;
    }
}
