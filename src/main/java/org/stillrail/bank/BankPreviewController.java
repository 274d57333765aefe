package org.stillrail.bank;

import jakarta.servlet.http.HttpServletResponse;
import java.util.UUID;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.stillrail.account.May;
import org.stillrail.library.Library;
import org.stillrail.web.Form;

/** Answers what stands on a bank page, storing nothing. */
@Controller
@PreAuthorize(May.SCRATCH)
class BankPreviewController {

    private final BankPages pages;
    private final Library library;

    BankPreviewController(BankPages pages, Library library) {
        this.pages = pages;
        this.library = library;
    }

    @PostMapping("/banks/preview")
    String preview(@RequestParam MultiValueMap<String, String> parameters, Model model, HttpServletResponse response) {
        Form form = Form.of(parameters);
        BankDocument document = BankForm.read(form, pages.railRevision(form), library);
        if (document != null) {
            pages.pictures(document, form, model);
            response.setHeader("HX-Trigger-After-Settle", "bank-previewed");
        }
        pages.form(form, model);
        pages.places(form, model);
        return "bank/preview";
    }

    /** What is said of the bank over all corners, and what small changes would do; asked for after each preview. */
    @PostMapping("/banks/judgement")
    String judgement(@RequestParam MultiValueMap<String, String> parameters, Model model) {
        Form form = Form.of(parameters);
        BankDocument document = BankForm.read(form, pages.railRevision(form), library);
        if (document != null) {
            pages.figures(document, form, model);
        }
        pages.form(form, model);
        model.addAttribute("indices", BankForm.indices(form));
        return "bank/judgement";
    }

    /**
     * The cards with one branch more, one less, or with a library part's label after it was chosen; with a mounting taken over, or with
     * nodes after a path was chosen.
     */
    @PostMapping("/banks/cards")
    String cards(
            @RequestParam MultiValueMap<String, String> parameters, @RequestParam(required = false) Integer remove,
            @RequestParam(required = false) String add, @RequestParam(required = false) Integer take,
            @RequestParam(required = false) String pathChosen, Model model, HttpServletResponse response) {
        Form form = Form.of(parameters);
        if (add != null) {
            BankForm.addBranch(form);
        }
        if (remove != null) {
            form = BankForm.withoutBranch(form, remove);
        }
        if (pathChosen != null) {
            DistanceForm.choose(form, BankForm.indices(form));
        }
        PartField.settle(form, library);
        for (int i : BankForm.indices(form)) {
            MountingForm mounting = new MountingForm(form, "b" + i + ".", "Branch " + (BankForm.indices(form).indexOf(i) + 1) + ": ");
            mounting.choose(library);
            if (take != null && take == i) {
                mounting.take(library);
            }
        }
        pages.cards(form, model);
        response.setHeader("HX-Trigger-After-Swap", "bank-changed");
        return "bank/parts :: cards";
    }
}
