package org.stillrail.bank;

import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.library.Library;
import org.stillrail.web.Form;

/** A bank without a rail: to try something, and to keep it for oneself. */
@Controller
@PreAuthorize(May.SCRATCH)
class ScratchController {

    private final Banks banks;
    private final BankPages pages;
    private final Library library;

    ScratchController(Banks banks, BankPages pages, Library library) {
        this.banks = banks;
        this.pages = pages;
        this.library = library;
    }

    @GetMapping("/scratch")
    String blank(@AuthenticationPrincipal CurrentPerson person, Model model) {
        Form form = Form.empty()
                .with("input", "12 V").with("output", "3.3 V").with("inductor", "3.3 uH").with("switching", "500 kHz").with("phases", "1")
                .with("crossover", "40 kHz").with("phaseMargin", "55 deg")
                .with("b0.part", BankForm.INLINE).with("b0.label", "bulk").with("b0.count", "1")
                .with("b0.capacitance", "330 uF").with("b0.resistance", "30 mohm").with("b0.inductance", "5 nH");
        return page(form, person, model);
    }

    @PostMapping("/scratch")
    String save(
            @RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson person, Model model,
            RedirectAttributes redirect) {
        Form form = Form.of(parameters);
        String name = form.text("name", "Name", true);
        BankDocument document = BankForm.read(form, null, library);
        if (document == null || name == null) {
            return page(form, person, model);
        }
        Bank bank = banks.add(null, name, document, person);
        redirect.addFlashAttribute("notice", "Saved as your scratch bank '" + name + "', revision 1.");
        return "redirect:/banks/" + bank.id();
    }

    private String page(Form form, CurrentPerson person, Model model) {
        BankDocument document = form.errors().none() ? BankForm.read(form, null, library) : null;
        if (document != null) {
            pages.figures(document, form, model);
        }
        pages.cards(form, model);
        pages.neighbours(null, null, model);
        model.addAttribute("mine", banks.scratchOf(person));
        model.addAttribute("mayEdit", true);
        model.addAttribute("action", "/scratch");
        return "bank/bank";
    }
}
