package org.stillrail.bank;

import java.util.List;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.stillrail.account.May;
import org.stillrail.library.Library;
import org.stillrail.library.PartChoice;

/** The few parts that fit what somebody types into a branch of the bank page. */
@Controller
class PartPickController {

    private static final int MOST = 12;

    private final Library library;

    PartPickController(Library library) {
        this.library = library;
    }

    /**
     * @param alternate whether it is to stand in for the branch's part, else to be it; parts that may not are shown, and why, but
     *                  cannot be taken
     */
    @GetMapping("/banks/parts")
    @PreAuthorize(May.SCRATCH)
    String matches(@RequestParam(defaultValue = "") String text, @RequestParam(defaultValue = "false") boolean alternate, Model model) {
        List<PartChoice> found = library.choices(text, MOST + 1);
        model.addAttribute("choices", found.stream().limit(MOST).toList());
        model.addAttribute("usable", alternate ? AlternatesForm.APPROVED : PartField.USABLE);
        model.addAttribute("more", found.size() > MOST);
        model.addAttribute("alternate", alternate);
        model.addAttribute("typedHere", PartField.TYPED_HERE);
        return "bank/part-matches";
    }
}
