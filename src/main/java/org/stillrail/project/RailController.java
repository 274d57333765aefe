package org.stillrail.project;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import org.stillrail.account.Role;
import org.stillrail.document.Revision;
import org.stillrail.electrical.requirement.ConverterFigures;
import org.stillrail.team.Settings;
import org.stillrail.web.Form;
import org.stillrail.web.Overtaken;
import org.stillrail.web.StaleVersionException;

/** One rail: its page, its revisions, and the form that makes the next one. */
@Controller
class RailController {

    private static final List<String> DESCRIBED = List.of("nominalVoltage", "nominalCurrent", "switching", "stepTo");

    private final Projects projects;
    private final ConverterPresets presets;
    private final List<RailBanks> banks;
    private final Settings settings;
    private final Clock clock;

    RailController(Projects projects, ConverterPresets presets, List<RailBanks> banks, Settings settings, Clock clock) {
        this.projects = projects;
        this.presets = presets;
        this.banks = banks;
        this.settings = settings;
        this.clock = clock;
    }

    @GetMapping("/rails/{railId}")
    String show(@PathVariable UUID railId, @AuthenticationPrincipal CurrentPerson person, Model model) {
        return page(projects.requireRail(railId), person, model);
    }

    @GetMapping("/rails/{railId}/revisions/{number}")
    String showRevision(
            @PathVariable UUID railId, @PathVariable int number, @AuthenticationPrincipal CurrentPerson person, Model model) {
        return page(projects.requireRail(railId, number), person, model);
    }

    /** A description of the rail may come along in the address. */
    @GetMapping("/projects/{projectId}/rails/new")
    @PreAuthorize(May.EDIT_PROJECT)
    String blank(
            @PathVariable UUID projectId, @RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson person,
            Model model) {
        projects.requireMember(projects.require(projectId).id(), person);
        Form form = Form.empty().with("phases", "1").with("inductanceTolerance", "20 %").with("switchingTolerance", "5 %")
                .with("control", "VOLTAGE_MODE").with("ramp", "1 V").with("phaseMargin", "55 deg")
                .with("ambientMinimum", "-20 degC").with("ambientNominal", "25 degC").with("ambientMaximum", "60 degC");
        Form described = Form.of(parameters);
        for (String name : DESCRIBED) {
            if (!described.isBlank(name)) {
                form.with(name, described.get(name));
            }
        }
        return edit(projectId, null, form, model);
    }

    @PostMapping("/projects/{projectId}/rails/new")
    @PreAuthorize(May.EDIT_PROJECT)
    String add(
            @PathVariable UUID projectId, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        projects.requireMember(projects.require(projectId).id(), person);
        Form form = Form.of(parameters);
        if (presetHandled(form, person)) {
            return edit(projectId, null, form, model);
        }
        String name = form.text("name", "Name", true);
        RailDocument document = RailForm.read(form);
        if (document == null || name == null) {
            return edit(projectId, null, form, model);
        }
        try {
            Rail rail = projects.addRail(projectId, name, document, person);
            redirect.addFlashAttribute("notice", "The rail is there. Next: compose a bank for it.");
            return "redirect:/rails/" + rail.id();
        } catch (NameTakenException e) {
            form.errors().add("name", e.getMessage());
            return edit(projectId, null, form, model);
        }
    }

    @GetMapping("/rails/{railId}/edit")
    @PreAuthorize(May.EDIT_PROJECT)
    String revisionOf(@PathVariable UUID railId, @AuthenticationPrincipal CurrentPerson person, Model model) {
        Rail rail = projects.requireRail(railId);
        projects.requireMember(rail.projectId(), person);
        return edit(rail.projectId(), rail, startingFrom(rail, RailForm.fill(rail.revision().document())), model);
    }

    @PostMapping("/rails/{railId}/edit")
    @PreAuthorize(May.EDIT_PROJECT)
    String revise(
            @PathVariable UUID railId, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        Rail rail = projects.requireRail(railId);
        projects.requireMember(rail.projectId(), person);
        Form form = Form.of(parameters);
        if (presetHandled(form, person)) {
            return edit(rail.projectId(), rail, form, model);
        }
        RailDocument document = RailForm.read(form);
        Long version = form.read("version", "Version", true, Long::valueOf);
        Integer from = form.whole("from", "Revision", 1, rail.latestNumber(), true);
        if (document == null || version == null || from == null) {
            return edit(rail.projectId(), rail, form, model);
        }
        try {
            Rail revised = projects.reviseRail(railId, version, document, person);
            redirect.addFlashAttribute("notice", "Saved as revision " + revised.latestNumber() + ". Banks judged by an older one are marked stale.");
            return "redirect:/rails/" + railId;
        } catch (StaleVersionException e) {
            Rail now = projects.requireRail(railId);
            List<Revision<RailDocument>> since = projects.historyOf(railId).stream().filter(revision -> revision.number() > from).toList();
            if (since.isEmpty()) {
                form.errors().add("", e.getReason());
            } else {
                RailDocument began = projects.requireRail(railId, from).revision().document();
                model.addAttribute("overtaken", Overtaken.carryOver(new RailShape(), form, began, since));
            }
            return edit(now.projectId(), now, startingFrom(now, form), model);
        }
    }

    private static Form startingFrom(Rail rail, Form form) {
        return form.with("version", Long.toString(rail.version())).with("from", Integer.toString(rail.revision().number()));
    }

    /** The form's two side buttons: take a preset's converter into the fields, or keep the fields' converter as a preset. */
    private boolean presetHandled(Form form, CurrentPerson person) {
        if (form.get("takePreset") != null) {
            UUID id = form.read("preset", "Preset", true, UUID::fromString);
            if (id != null) {
                presets.find(id).ifPresentOrElse(
                        preset -> ConverterForm.fill(form, preset.converter()),
                        () -> form.errors().add("preset", "There is no such preset"));
            }
            return true;
        }
        if (form.get("keepPreset") != null) {
            String name = form.text("presetName", "Name of the preset", true);
            ConverterFigures converter = ConverterForm.read(form);
            if (name != null && converter != null && !presets.insert(name, converter, person.displayName(), OffsetDateTime.now(clock))) {
                form.errors().add("presetName", "There is a preset '" + name + "' already; choose another name");
            }
            return true;
        }
        return false;
    }

    private String page(Rail rail, CurrentPerson person, Model model) {
        model.addAttribute("project", projects.require(rail.projectId()));
        model.addAttribute("rail", rail);
        model.addAttribute("facts", RailFacts.of(rail.figures(), settings.current().evaluation().currencyUnit()));
        model.addAttribute("history", projects.historyOf(rail.id()));
        model.addAttribute("banks", banks.stream()
                .flatMap(source -> source.of(List.of(rail.id())).getOrDefault(rail.id(), List.of()).stream()).toList());
        model.addAttribute("mayEdit", person.has(Role.ENGINEER) && projects.isMember(rail.projectId(), person));
        return "project/rail";
    }

    private String edit(UUID projectId, Rail rail, Form form, Model model) {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", "none");
        presets.all().forEach(preset -> choices.put(preset.id().toString(), preset.name()));
        model.addAttribute("project", projects.require(projectId));
        model.addAttribute("rail", rail);
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        model.addAttribute("presets", choices);
        model.addAttribute("topologies", ConverterForm.topologies());
        model.addAttribute("controls", ControlForm.controls());
        model.addAttribute("compensations", ControlForm.compensations());
        model.addAttribute("amplifiers", ControlForm.amplifiers());
        return "project/rail-edit";
    }
}
