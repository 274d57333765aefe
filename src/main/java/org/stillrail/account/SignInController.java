package org.stillrail.account;

import jakarta.servlet.http.HttpSession;
import java.util.List;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.stillrail.web.Form;

/** The sign-in page; the form itself is answered by the security filters. */
@Controller
class SignInController {

    private final People people;
    private final boolean demo;

    SignInController(People people, Environment environment) {
        this.people = people;
        this.demo = environment.acceptsProfiles(Profiles.of("demo"));
    }

    @GetMapping("/sign-in")
    String show(
            @RequestParam(required = false) String failed, @RequestParam(name = "signed-out", required = false) String signedOut,
            @RequestParam(required = false) String changed, @AuthenticationPrincipal CurrentPerson person, HttpSession session, Model model) {
        if (person != null) {
            return "redirect:/";
        }
        Form form = Form.empty().with("userName", (String) session.getAttribute(SignInFailed.TYPED_NAME));
        session.removeAttribute(SignInFailed.TYPED_NAME);
        model.addAttribute("form", form);
        model.addAttribute("failed", failed != null);
        model.addAttribute("signedOut", signedOut != null);
        model.addAttribute("changed", changed != null);
        model.addAttribute("setupNeeded", people.none());
        model.addAttribute("demoAccounts", demo ? DemoAccount.ALL : List.of());
        model.addAttribute("demoPassword", DemoAccount.PASSWORD);
        return "account/sign-in";
    }
}
