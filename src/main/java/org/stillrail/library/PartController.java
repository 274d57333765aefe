package org.stillrail.library;

import java.util.Arrays;
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
import org.stillrail.team.Settings;
import org.stillrail.team.VettingItem;
import org.stillrail.web.Form;
import org.stillrail.web.StaleVersionException;

/** One part: its page, older revisions, vetting and the choice of its model. */
@Controller
class PartController {

    private final Library library;
    private final PartModels models;
    private final PartCharts charts;
    private final VettingChecklists checklists;
    private final List<PartUses> uses;
    private final Settings settings;

    PartController(Library library, PartModels models, PartCharts charts, VettingChecklists checklists, List<PartUses> uses, Settings settings) {
        this.library = library;
        this.models = models;
        this.charts = charts;
        this.checklists = checklists;
        this.uses = uses;
        this.settings = settings;
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
        boolean withdrawn = vetting == Vetting.WITHDRAWN;
        Part replacement = withdrawn ? form.read("replacement", "Replacement", false, this::replacement) : null;
        boolean reasonNeeded = vetting == Vetting.RESTRICTED || withdrawn && form.isBlank("replacement");
        String reason = form.text("reason", withdrawn ? "A replacement, or the reason why there is none," : "The condition", reasonNeeded);
        Long version = form.read("version", "Version", true, Long::valueOf);
        if (!form.errors().none()) {
            return page(library.require(partId), form, model);
        }
        try {
            library.changeVetting(partId, version, vetting, reason, replacement, person);
        } catch (StaleVersionException e) {
            form.errors().add("", e.getReason());
            return page(library.require(partId), form, model);
        } catch (VettingRefusedException e) {
            form.errors().add(e.field(), e.getMessage());
            return page(library.require(partId), form, model);
        }
        redirect.addFlashAttribute("notice", "The part is now " + vetting.label() + "." + consequence(partId));
        return "redirect:/library/parts/" + partId;
    }

    @PostMapping("/library/parts/{partId}/model")
    @PreAuthorize(May.VET)
    String chooseModel(
            @PathVariable UUID partId, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        Form form = Form.of(parameters);
        Long version = form.read("version", "Version", true, Long::valueOf);
        ModelChoice choice = ModelChoiceForm.read(form, parameters.getOrDefault("averaged", List.of()));
        if (form.errors().none()) {
            Part now = library.require(partId);
            form.read("model", "Model", true, text -> models.usable(now, choice));
        }
        if (!form.errors().none()) {
            return page(library.require(partId), form, model);
        }
        Part part;
        try {
            part = library.chooseModel(partId, version, choice, person);
        } catch (StaleVersionException e) {
            form.errors().add("", e.getReason());
            return page(library.require(partId), form, model);
        }
        redirect.addFlashAttribute("notice", "Revision " + part.latestNumber() + " lends the chosen model to banks from now on." + consequence(partId));
        return "redirect:/library/parts/" + partId;
    }

    @PostMapping("/library/parts/{partId}/exemptions")
    @PreAuthorize(May.VET)
    String exempt(
            @PathVariable UUID partId, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        Part part = library.require(partId);
        Form form = Form.of(parameters);
        VettingItem item = form.read("item", "The item", true, PartController::item);
        String reason = form.text("exemption", "The reason", true);
        if (!form.errors().none()) {
            return page(part, form, model);
        }
        try {
            library.exempt(partId, item, reason, person);
        } catch (StaleVersionException e) {
            form.errors().add("", e.getReason());
            return page(library.require(partId), form, model);
        }
        redirect.addFlashAttribute("notice", "The reason is kept and stands on the checklist.");
        return "redirect:/library/parts/" + partId;
    }

    @GetMapping("/library/parts/{partId}/revisions/{number}/differences")
    String differences(@PathVariable UUID partId, @PathVariable int number, @RequestParam MultiValueMap<String, String> parameters, Model model) {
        Part after = library.require(partId, number);
        Integer asked = Form.of(parameters).whole("from", "Revision", 1, Integer.MAX_VALUE, false);
        Part before = library.require(partId, asked == null ? Math.max(1, number - 1) : asked);
        model.addAttribute("before", before);
        model.addAttribute("after", after);
        model.addAttribute("differences", PartDifference.between(before.document(), after.document()));
        return "library/differences";
    }

    private Part replacement(String number) {
        return library.find(number).orElseThrow(() -> new IllegalArgumentException(
                "Replacement: the library has no part '" + number + "'; take one from the list or type its whole number"));
    }

    private static VettingItem item(String text) {
        return Arrays.stream(VettingItem.values()).filter(item -> item.name().equals(text) && item.reasonSuffices()).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("A reason does not stand in for '" + text + "'"));
    }

    private List<PartUse> usesOf(UUID partId) {
        return uses.stream().flatMap(use -> use.of(partId).stream()).sorted(Comparator.comparing(PartUse::name)).toList();
    }

    /** What a change of a part means for banks, as a further sentence. */
    private String consequence(UUID partId) {
        long changed = usesOf(partId).stream().filter(PartUse::evidenceChanged).count();
        return changed == 0 ? "" : " Evidence changed for " + changed + (changed == 1 ? " bank" : " banks")
                + ": see under 'Where it is used' what it does to the verdicts. Nothing approved was changed.";
    }

    private String page(Part part, Form form, Model model) {
        List<Sweep> sweeps = library.sweepsOf(part.id());
        PartModel partModel = models.of(part);
        List<PartAtPoint> chosen = PartAtPoint.readAll(form, partModel);
        model.addAttribute("part", part);
        model.addAttribute("chosen", chosen);
        model.addAttribute("lives", PartAtPoint.lives());
        model.addAttribute("left", CapacitanceLeft.of(part.document(), partModel));
        model.addAttribute("changes", PartChanges.of(part.document(), partModel));
        model.addAttribute("estimates", models.ofDatasheet(part.document()).estimates());
        model.addAttribute("standsAt", PartChanges.family(partModel));
        model.addAttribute("changeCharts", PartChangeCharts.of(part.document(), partModel));
        model.addAttribute("document", part.document());
        model.addAttribute("currency", settings.current().evaluation().currencyUnit());
        model.addAttribute("history", library.history(part.id()));
        model.addAttribute("sweeps", sweeps);
        model.addAttribute("model", partModel);
        model.addAttribute("later", PartModels.later(part, sweeps));
        model.addAttribute("charts", charts.of(part.document(), sweeps, chosen));
        model.addAttribute("samples", Samples.of(sweeps, PartModels.testFrequencyHz(part.document())));
        model.addAttribute("family", FamilyCharts.of(part.document(), partModel.family()));
        List<PartUse> uses = usesOf(part.id());
        model.addAttribute("uses", uses);
        model.addAttribute("railLeft", CapacitanceLeft.atRails(uses, partModel));
        model.addAttribute("checklist", checklists.of(part, sweeps));
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        return "library/part";
    }
}
