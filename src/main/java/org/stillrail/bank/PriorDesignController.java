package org.stillrail.bank;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
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
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.library.Library;
import org.stillrail.library.PartChoice;
import org.stillrail.library.Vetting;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;
import org.stillrail.project.RailTraits;
import org.stillrail.web.Form;
import org.stillrail.web.Quantity;
import org.stillrail.web.SearchWords;

/** Approved banks of similar rails: describe a rail or open one, look, and copy one over. */
@Controller
class PriorDesignController {

    private static final int MOST = 25;

    private final PriorDesigns designs;
    private final BankEvidence evidence;
    private final Banks banks;
    private final Library library;
    private final Projects projects;

    PriorDesignController(PriorDesigns designs, BankEvidence evidence, Banks banks, Library library, Projects projects) {
        this.designs = designs;
        this.evidence = evidence;
        this.banks = banks;
        this.library = library;
        this.projects = projects;
    }

    /**
     * One prior design as the page lists it.
     *
     * @param changed whether a part of it says something else by now
     */
    record Line(PriorDesigns.PriorDesign design, String parts, String distance, List<String> differences, boolean changed) {
    }

    @GetMapping("/prior-designs")
    String show(@RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson person, Model model) {
        Form form = Form.of(parameters);
        UUID railId = form.read("rail", "Rail", false, UUID::fromString);
        Rail rail = railId == null ? null : projects.requireRail(railId);
        if (rail != null && form.isBlank("voltage")) {
            fill(form, RailTraits.of(rail.figures()));
        }
        model.addAttribute("rail", rail);
        model.addAttribute("mayCopy", rail != null && banks.mayEdit(rail.id(), person));
        RailTraits asked = form.isBlank("voltage") ? null : traits(form);
        PriorDesigns.Filter filter = filter(form, railId);
        model.addAttribute("lines", asked == null || !form.errors().none() ? null : lines(asked, filter));
        model.addAttribute("own", rail == null && asked != null && person.has(Role.ENGINEER) ? projects.ofMember(person, MOST) : List.of());
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        model.addAttribute("technologies", technologies());
        return "bank/prior-designs";
    }

    /** Copies an approved bank to another rail as revision 1 in work, with the newest revisions of its parts. */
    @PostMapping("/rails/{railId}/banks/copies")
    @PreAuthorize(May.EDIT_PROJECT)
    String copy(
            @PathVariable UUID railId, @RequestParam UUID revision, @AuthenticationPrincipal CurrentPerson person, RedirectAttributes redirect) {
        Rail rail = projects.requireRail(railId);
        projects.requireMember(rail.projectId(), person);
        Bank original = banks.requireRevision(revision);
        BankDocument renewed = original.document();
        for (UUID partId : original.document().partIds()) {
            renewed = renewed.withPartRevision(partId, library.find(partId).orElseThrow().revision().id());
        }
        String note = "Copied from bank " + original.name() + ", revision " + original.revision().number() + ".";
        Bank copy = banks.add(railId, original.name(), renewed.withBranches(rail.revision().id(), renewed.branches(), note), person);
        redirect.addFlashAttribute("notice", "Copied as revision 1, in work, and worked out again for this rail. Left: the original on its own rail; right: the copy here."
                + toLookAt(copy.document()));
        return "redirect:/compare?revision=" + original.revision().id() + "&revision=" + copy.revision().id();
    }

    /** The parts that a bank had better not begin with, as a further sentence. */
    private String toLookAt(BankDocument document) {
        String named = library.chosen(document.partIds()).stream()
                .filter(part -> part.vetting() == Vetting.WITHDRAWN || part.vetting() == Vetting.RESTRICTED)
                .map(PartChoice::standing).collect(Collectors.joining("; "));
        return named.isEmpty() ? "" : " Look at its parts before you go on: " + named + ".";
    }

    private List<Line> lines(RailTraits asked, PriorDesigns.Filter filter) {
        List<PriorDesigns.Near> near = designs.near(asked, filter, MOST);
        List<UUID> shown = near.stream().map(each -> each.design().revisionId()).toList();
        Map<UUID, String> parts = designs.phrases(shown);
        Set<UUID> changed = evidence.changedOf(shown);
        return near.stream().map(each -> new Line(each.design(), parts.getOrDefault(each.design().revisionId(), "figures typed by hand"),
                Quantity.format(each.distance(), "", 2), asked.differencesTo(each.design().traits()),
                changed.contains(each.design().revisionId()))).toList();
    }

    private static RailTraits traits(Form form) {
        Double voltageV = form.positive("voltage", "Output voltage", "V", true);
        Double currentA = form.positive("current", "Load current", "A", true);
        Double switchingHz = form.positive("switching", "Switching frequency", "Hz", true);
        Double loadStepA = form.positive("step", "Load step", "A", false);
        return form.errors().none() ? new RailTraits(voltageV, currentA, switchingHz, loadStepA) : null;
    }

    private static void fill(Form form, RailTraits traits) {
        form.with("voltage", Quantity.entry(traits.voltageV(), "V")).with("current", Quantity.entry(traits.currentA(), "A"))
                .with("switching", Quantity.entry(traits.switchingHz(), "Hz")).with("step", Quantity.entry(traits.loadStepA(), "A"));
    }

    private static PriorDesigns.Filter filter(Form form, UUID railId) {
        Technology technology = form.read("technology", "Technology", false, Technology::ofKey);
        String project = form.text("project", "Project", false);
        Double within = form.positive("within", "Distance", "", false);
        return new PriorDesigns.Filter(technology, project == null ? null : SearchWords.pattern(project), within, railId);
    }

    private static Map<String, String> technologies() {
        Map<String, String> choices = new LinkedHashMap<>();
        choices.put("", "any");
        Arrays.stream(Technology.values()).forEach(technology -> choices.put(technology.key(), technology.label()));
        return choices;
    }
}
