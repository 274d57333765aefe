package org.stillrail.bank;

import java.util.List;
import java.util.Set;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.stillrail.account.May;
import org.stillrail.library.Library;
import org.stillrail.library.PartChoice;
import org.stillrail.library.Vetting;

/** The few parts that fit what somebody types into a branch of the bank page, or as what replaces another part. */
@Controller
class PartPickController {

    private static final int MOST = 12;

    /** What a part is looked for. */
    enum Purpose {

        /** To be the part of a branch. */
        PART(PartField.USABLE),
        /** To stand in for a branch's part. */
        ALTERNATE(Vetting.APPROVED),
        /** To replace a withdrawn part. */
        REPLACEMENT(PartField.USABLE);

        private final Set<Vetting> usable;

        Purpose(Set<Vetting> usable) {
            this.usable = usable;
        }
    }

    private final Library library;

    PartPickController(Library library) {
        this.library = library;
    }

    /** Parts that may not be taken for the purpose are shown, and why. */
    @GetMapping("/banks/parts")
    @PreAuthorize(May.SCRATCH)
    String matches(@RequestParam(defaultValue = "") String text, @RequestParam(defaultValue = "PART") Purpose purpose, Model model) {
        List<PartChoice> found = library.choices(text, MOST + 1);
        model.addAttribute("choices", found.stream().limit(MOST).toList());
        model.addAttribute("usable", purpose.usable);
        model.addAttribute("more", found.size() > MOST);
        model.addAttribute("typedHere", purpose == Purpose.PART ? PartField.TYPED_HERE : null);
        return "bank/part-matches";
    }
}
