package org.stillrail.review;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The check of the whole installation as a page; everyone signed in may ask for it. */
@Controller
class InstallationCheckController {

    private final InstallationCheck check;

    InstallationCheckController(InstallationCheck check) {
        this.check = check;
    }

    @GetMapping("/reviews/check")
    String show(Model model) {
        model.addAttribute("findings", check.run(false));
        return "review/check";
    }
}
