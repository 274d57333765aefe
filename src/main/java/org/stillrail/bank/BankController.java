package org.stillrail.bank;

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
import org.stillrail.library.Library;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;
import org.stillrail.web.Form;
import org.stillrail.web.Overtaken;
import org.stillrail.web.StaleVersionException;

/** A stored bank: its page, older revisions, and saving the next one. */
@Controller
class BankController {

    private final Banks banks;
    private final BankPages pages;
    private final Library library;
    private final Projects projects;
    private final List<BankPanel> panels;

    BankController(Banks banks, BankPages pages, Library library, Projects projects, List<BankPanel> panels) {
        this.banks = banks;
        this.pages = pages;
        this.library = library;
        this.projects = projects;
        this.panels = panels;
    }

    @GetMapping("/banks/{bankId}")
    String show(@PathVariable UUID bankId, @AuthenticationPrincipal CurrentPerson person, Model model) {
        return stored(banks.require(bankId), person, model);
    }

    @GetMapping("/banks/{bankId}/revisions/{number}")
    String showRevision(
            @PathVariable UUID bankId, @PathVariable int number, @AuthenticationPrincipal CurrentPerson person, Model model) {
        return stored(banks.require(bankId, number), person, model);
    }

    @PostMapping("/banks/{bankId}")
    @PreAuthorize(May.SCRATCH)
    String save(
            @PathVariable UUID bankId, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        Bank bank = banks.require(bankId);
        banks.requireEditor(bank, person);
        Form form = Form.of(parameters);
        BankDocument document = BankForm.read(form, pages.railRevision(form), library);
        Long version = form.read("version", "Version", true, Long::valueOf);
        if (document == null || version == null) {
            return page(bank, form, person, model);
        }
        try {
            Bank saved = banks.save(bankId, version, document, person);
            redirect.addFlashAttribute("notice", "Saved as revision " + saved.latestNumber() + ".");
            return "redirect:/banks/" + bankId;
        } catch (StaleVersionException e) {
            BankShape shape = new BankShape(document.railRevisionId(), library);
            Bank began = form.isBlank(BankPages.REVISION) ? bank : banks.requireRevision(UUID.fromString(form.get(BankPages.REVISION)));
            List<Revision<BankDocument>> since = banks.history(bankId).stream()
                    .filter(revision -> began.id().equals(bankId) && revision.number() > began.revision().number()).toList();
            if (since.isEmpty()) {
                form.errors().add("", e.getReason() + " What you composed is still on this page; saving again makes it the next revision.");
            } else {
                model.addAttribute("meanwhile", Overtaken.carryOver(shape, form, began.document(), since));
            }
            Bank now = banks.require(bankId);
            BankDocument carried = since.isEmpty() ? document : shape.read(form);
            if (carried != null) {
                pages.figures(carried, startingFrom(now, form), model);
            }
            return page(now, startingFrom(now, form), person, model);
        }
    }

    /** The page says what it was filled from, so that a save after somebody else's is noticed and compared. */
    private static Form startingFrom(Bank bank, Form form) {
        return form.with("version", Long.toString(bank.version())).with(BankPages.REVISION, bank.revision().id().toString());
    }

    @GetMapping("/rails/{railId}/banks/new")
    @PreAuthorize(May.EDIT_PROJECT)
    String blank(@PathVariable UUID railId, @AuthenticationPrincipal CurrentPerson person, Model model) {
        Rail rail = projects.requireRail(railId);
        projects.requireMember(rail.projectId(), person);
        Form form = Form.empty().with("railRevision", rail.revision().id().toString());
        BankForm.addBranch(form);
        return blank(rail, form, model);
    }

    @PostMapping("/rails/{railId}/banks/new")
    @PreAuthorize(May.EDIT_PROJECT)
    String add(
            @PathVariable UUID railId, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        Rail rail = projects.requireRail(railId);
        projects.requireMember(rail.projectId(), person);
        Form form = Form.of(parameters);
        String name = form.text("name", "Name", true);
        BankDocument document = BankForm.read(form, rail.revision().id(), library);
        if (document == null || name == null) {
            return blank(rail, form, model);
        }
        Bank bank = banks.add(railId, name, document, person);
        redirect.addFlashAttribute("notice", "The bank is saved as revision 1, in work.");
        return "redirect:/banks/" + bank.id();
    }

    private String stored(Bank bank, CurrentPerson person, Model model) {
        Form form = startingFrom(bank, BankForm.fill(bank.document(), library));
        if (bank.railId() != null) {
            form.with("railRevision", bank.document().railRevisionId().toString());
        }
        pages.figures(bank.document(), form, model);
        return page(bank, form, person, model);
    }

    private String page(Bank bank, Form form, CurrentPerson person, Model model) {
        pages.cards(form, model);
        pages.neighbours(bank.railId(), bank.id(), model);
        if (bank.railId() != null) {
            Rail judgedBy = projects.requireRailRevision(bank.document().railRevisionId());
            model.addAttribute("rail", judgedBy);
            model.addAttribute("project", projects.require(judgedBy.projectId()));
            model.addAttribute("stale", !judgedBy.isLatest());
        }
        panels.forEach(panel -> panel.addTo(bank, person, model));
        model.addAttribute("panels", panels.stream().map(BankPanel::fragment).toList());
        model.addAttribute("bank", bank);
        model.addAttribute("history", banks.history(bank.id()));
        model.addAttribute("mayEdit", bank.isLatest() && banks.mayEdit(bank, person));
        model.addAttribute("action", "/banks/" + bank.id());
        return "bank/bank";
    }

    private String blank(Rail rail, Form form, Model model) {
        BankDocument document = form.errors().none() ? BankForm.read(form, rail.revision().id(), library) : null;
        if (document != null) {
            pages.figures(document, form, model);
        }
        pages.cards(form, model);
        pages.neighbours(rail.id(), null, model);
        model.addAttribute("rail", rail);
        model.addAttribute("project", projects.require(rail.projectId()));
        model.addAttribute("mayEdit", true);
        model.addAttribute("action", "/rails/" + rail.id() + "/banks/new");
        return "bank/bank";
    }
}
