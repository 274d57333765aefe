package org.stillrail.library;

import java.util.List;
import java.util.UUID;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.document.Revision;
import org.stillrail.web.Form;
import org.stillrail.web.Overtaken;
import org.stillrail.web.StaleVersionException;

/** Proposing a part and revising one. */
@Controller
@PreAuthorize(May.PROPOSE_PART)
class PartEditController {

    private final Library library;

    PartEditController(Library library) {
        this.library = library;
    }

    @GetMapping("/library/parts/new")
    String blank(Model model) {
        Form form = Form.empty()
                .with("toleranceMinus", "20 %").with("tolerancePlus", "20 %").with("loss1Kind", "LOSS_TANGENT");
        return edit(null, form, model);
    }

    @PostMapping("/library/parts/new")
    String propose(
            @RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson person, Model model,
            RedirectAttributes redirect) {
        Form form = Form.of(parameters);
        PartDocument document = PartForm.read(form);
        if (document == null) {
            return edit(null, form, model);
        }
        try {
            Part part = library.propose(document, person);
            redirect.addFlashAttribute("notice", part.partNumber() + " is proposed. A librarian vets it; banks can use it already.");
            return "redirect:/library/parts/" + part.id();
        } catch (PartNumberTakenException e) {
            form.errors().add("partNumber", e.getMessage());
            return edit(null, form, model);
        }
    }

    @GetMapping("/library/parts/{partId}/edit")
    String revisionOf(@PathVariable UUID partId, @AuthenticationPrincipal CurrentPerson person, Model model) {
        Part part = library.require(partId);
        library.requireReviser(part, person);
        return edit(part, startingFrom(part, PartForm.fill(part.document())), model);
    }

    @PostMapping("/library/parts/{partId}/edit")
    String revise(
            @PathVariable UUID partId, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        Part part = library.require(partId);
        Form form = Form.of(parameters).with("partNumber", part.partNumber());
        PartDocument document = PartForm.read(form);
        Long version = form.read("version", "Version", true, Long::valueOf);
        Integer from = form.whole("from", "Revision", 1, part.latestNumber(), true);
        if (document == null || version == null || from == null) {
            return edit(part, form, model);
        }
        try {
            Part revised = library.revise(partId, version, document, person);
            redirect.addFlashAttribute("notice", "Saved as revision " + revised.latestNumber() + "; the older ones stay readable.");
            return "redirect:/library/parts/" + partId;
        } catch (VettingRefusedException e) {
            form.errors().add(e.field(), e.getMessage());
            return edit(part, form, model);
        } catch (StaleVersionException e) {
            Part now = library.require(partId);
            List<Revision<PartDocument>> since = library.history(partId).stream().filter(revision -> revision.number() > from).toList();
            if (since.isEmpty()) {
                form.errors().add("", e.getReason() + " It is " + now.vetting().label() + " now; its figures are the ones you began with.");
            } else {
                model.addAttribute("overtaken", Overtaken.carryOver(new PartShape(), form, library.require(partId, from).document(), since));
            }
            return edit(now, startingFrom(now, form), model);
        }
    }

    private static Form startingFrom(Part part, Form form) {
        return form.with("version", Long.toString(part.version())).with("from", Integer.toString(part.revision().number()));
    }

    private static String edit(Part part, Form form, Model model) {
        model.addAttribute("part", part);
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        model.addAttribute("technologies", PartForm.technologies());
        model.addAttribute("lossRows", LossForm.rows(form));
        model.addAttribute("livesOverVoltage", PartForm.livesOverVoltage());
        model.addAttribute("lossKinds", LossForm.kinds());
        model.addAttribute("bounds", LossForm.bounds());
        return "library/edit";
    }
}
