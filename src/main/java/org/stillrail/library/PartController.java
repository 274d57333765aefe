package org.stillrail.library;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
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
import org.stillrail.web.Form;
import org.stillrail.web.StaleVersionException;

/** One part: its page, older revisions, vetting and the choice of its model. */
@Controller
class PartController {

    private final Library library;
    private final PartModels models;
    private final PartCharts charts;
    private final List<PartUses> uses;

    PartController(Library library, PartModels models, PartCharts charts, List<PartUses> uses) {
        this.library = library;
        this.models = models;
        this.charts = charts;
        this.uses = uses;
    }

    @GetMapping("/library/parts/{partId}")
    String show(@PathVariable UUID partId, @RequestParam MultiValueMap<String, String> parameters, Model model) {
        return page(library.require(partId), Form.of(parameters), model);
    }

    @GetMapping("/library/parts/{partId}/revisions/{number}")
    String showRevision(@PathVariable UUID partId, @PathVariable int number, Model model) {
        return page(library.require(partId, number), Form.empty(), model);
    }

    @PostMapping("/library/parts/{partId}/vetting")
    @PreAuthorize(May.VET)
    String changeVetting(
            @PathVariable UUID partId, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        Form form = Form.of(parameters);
        Vetting vetting = form.read("vetting", "State", true, text -> Vetting.valueOf(text.toUpperCase(Locale.ROOT)));
        boolean reasonNeeded = vetting == Vetting.RESTRICTED || vetting == Vetting.WITHDRAWN;
        String reason = form.text("reason", vetting == Vetting.RESTRICTED ? "The condition" : "The reason or the replacement", reasonNeeded);
        Long version = form.read("version", "Version", true, Long::valueOf);
        if (!form.errors().none()) {
            return page(library.require(partId), form, model);
        }
        try {
            library.changeVetting(partId, version, vetting, reason, person);
        } catch (StaleVersionException e) {
            form.errors().add("", e.getReason());
            return page(library.require(partId), form, model);
        }
        redirect.addFlashAttribute("notice", "The part is now " + vetting.label() + ".");
        return "redirect:/library/parts/" + partId;
    }

    @PostMapping("/library/parts/{partId}/model")
    @PreAuthorize(May.VET)
    String chooseModel(
            @PathVariable UUID partId, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        Form form = Form.of(parameters);
        String chosen = form.text("model", "Model", true);
        String reason = form.text("modelReason", "The reason", true);
        Long version = form.read("version", "Version", true, Long::valueOf);
        UUID sweepId = chosen == null || chosen.equals("datasheet") ? null : form.read("model", "Model", true, UUID::fromString);
        if (!form.errors().none()) {
            return page(library.require(partId), form, model);
        }
        ModelChoice choice = sweepId == null
                ? new ModelChoice(ModelChoice.Kind.DATASHEET, null, reason)
                : new ModelChoice(ModelChoice.Kind.SWEEP, sweepId, reason);
        Part part;
        try {
            part = library.chooseModel(partId, version, choice, person);
        } catch (StaleVersionException e) {
            form.errors().add("", e.getReason());
            return page(library.require(partId), form, model);
        }
        redirect.addFlashAttribute("notice", "Revision " + part.latestNumber() + " lends the chosen model to banks from now on.");
        return "redirect:/library/parts/" + partId;
    }

    private String page(Part part, Form form, Model model) {
        List<Sweep> sweeps = library.sweepsOf(part.id());
        PartModel partModel = models.of(part.document());
        PartAtPoint chosen = form.isBlank("atBias") ? null : PartAtPoint.read(form, partModel);
        model.addAttribute("part", part);
        model.addAttribute("chosen", chosen);
        model.addAttribute("left", CapacitanceLeft.of(part.document(), partModel));
        model.addAttribute("document", part.document());
        model.addAttribute("history", library.history(part.id()));
        model.addAttribute("sweeps", sweeps);
        model.addAttribute("model", partModel);
        model.addAttribute("charts", charts.of(part.document(), sweeps, chosen));
        model.addAttribute("uses", uses.stream().flatMap(use -> use.of(part.id()).stream())
                .sorted(Comparator.comparing(PartUse::name)).toList());
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        return "library/part";
    }
}
