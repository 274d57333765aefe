package org.stillrail.project;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.LongConsumer;
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
import org.stillrail.account.People;
import org.stillrail.account.Role;
import org.stillrail.web.Form;
import org.stillrail.web.NotFoundException;
import org.stillrail.web.Page;
import org.stillrail.web.SearchWords;
import org.stillrail.web.StaleVersionException;

/** The list of projects, a project with its rails, and its members. */
@Controller
class ProjectController {

    private static final int PAGE_SIZE = 25;

    private final Projects projects;
    private final People people;
    private final List<RailBanks> banks;

    ProjectController(Projects projects, People people, List<RailBanks> banks) {
        this.projects = projects;
        this.people = people;
        this.banks = banks;
    }

    /** A rail with its banks, for a list. */
    record RailLine(Rail rail, List<RailBank> banks) {
    }

    @GetMapping("/projects")
    String list(@RequestParam MultiValueMap<String, String> parameters, Model model) {
        return list(Form.of(parameters), model);
    }

    @PostMapping("/projects")
    @PreAuthorize(May.EDIT_PROJECT)
    String start(
            @RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson person, Model model,
            RedirectAttributes redirect) {
        Form form = Form.of(parameters);
        String name = form.text("name", "Name", true);
        String purpose = form.text("purpose", "Purpose", true);
        if (!form.errors().none()) {
            return list(form, model);
        }
        try {
            Project project = projects.start(name, purpose, person);
            redirect.addFlashAttribute("notice", "The project is there. Next: say what its first rail asks for.");
            return "redirect:/projects/" + project.id();
        } catch (NameTakenException e) {
            form.errors().add("name", e.getMessage());
            return list(form, model);
        }
    }

    @GetMapping("/projects/{projectId}")
    String show(@PathVariable UUID projectId, @AuthenticationPrincipal CurrentPerson person, Model model) {
        return page(projectId, person, Form.empty(), model);
    }

    private String page(UUID projectId, CurrentPerson person, Form form, Model model) {
        Project project = projects.require(projectId);
        List<Member> members = projects.members(projectId);
        model.addAttribute("project", project);
        model.addAttribute("signatures", projects.signatures(projectId));
        model.addAttribute("members", members);
        model.addAttribute("mayEdit", person.has(Role.ENGINEER) && projects.isMember(projectId, person));
        model.addAttribute("mayAdd", projects.mayAddMember(projectId, person));
        model.addAttribute("nobodyEdits", !projects.hasEditor(projectId));
        model.addAttribute("rails", lines(projectId));
        Map<String, String> others = new LinkedHashMap<>();
        people.withRole(Role.ENGINEER).stream()
                .filter(other -> members.stream().noneMatch(member -> member.personId().equals(other.id())))
                .forEach(other -> others.put(other.id().toString(), other.displayName()));
        model.addAttribute("others", others);
        model.addAttribute("version", projects.version(projectId));
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        return "project/project";
    }

    @PostMapping("/projects/{projectId}/members")
    @PreAuthorize(May.ADD_MEMBER)
    String addMember(
            @PathVariable UUID projectId, @RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson by, Model model) {
        projects.requireMayAddMember(projects.require(projectId).id(), by);
        Form form = Form.of(parameters);
        UUID member = form.read("person", "Engineer", true, UUID::fromString);
        return changed(projectId, form, by, model, version -> {
            if (people.byId(member).filter(person -> person.active() && person.has(Role.ENGINEER)).isEmpty()) {
                throw new NotFoundException("There is no such engineer.");
            }
            projects.addMember(projectId, version, member, by);
        });
    }

    @PostMapping("/projects/{projectId}/members/{personId}/remove")
    @PreAuthorize(May.EDIT_PROJECT)
    String removeMember(
            @PathVariable UUID projectId, @PathVariable UUID personId, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson by, Model model) {
        projects.requireMember(projects.require(projectId).id(), by);
        return changed(projectId, Form.of(parameters), by, model, version -> projects.removeMember(projectId, version, personId, by));
    }

    @PostMapping("/projects/{projectId}/signatures")
    @PreAuthorize(May.EDIT_PROJECT)
    String askSignatures(
            @PathVariable UUID projectId, @RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson by, Model model,
            RedirectAttributes redirect) {
        projects.requireMember(projects.require(projectId).id(), by);
        Form form = Form.of(parameters);
        Integer signatures = form.whole("signatures", "Signatures", 1, 2, true);
        return changed(projectId, form, by, model, version -> {
            projects.askSignatures(projectId, version, signatures, by);
            redirect.addFlashAttribute("notice", signatures == 1 ? "One reviewer signs." : "Two reviewers sign from now on.");
        });
    }

    /** Does what a form of the project's page asks, at the version that it was opened at; else the page comes back and says why not. */
    private String changed(UUID projectId, Form form, CurrentPerson by, Model model, LongConsumer change) {
        Long version = form.read("version", "Version", true, Long::valueOf);
        if (!form.errors().none()) {
            return page(projectId, by, form, model);
        }
        try {
            change.accept(version);
        } catch (StaleVersionException e) {
            form.errors().add("", e.getReason());
            return page(projectId, by, form, model);
        }
        return "redirect:/projects/" + projectId;
    }

    private String list(Form form, Model model) {
        String text = form.isBlank("text") ? "" : form.get("text").strip().replace("\0", "");
        String pattern = SearchWords.pattern(text);
        Page page = Page.of(form, PAGE_SIZE, projects.count(pattern));
        List<Project> shown = projects.list(pattern, page.offset(), PAGE_SIZE);
        Map<UUID, List<RailLine>> lines = lines(projects.railsOf(shown));
        Map<Project, List<RailLine>> all = new LinkedHashMap<>();
        shown.forEach(project -> all.put(project, lines.getOrDefault(project.id(), List.of())));
        model.addAttribute("page", page);
        model.addAttribute("projects", all);
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        return "project/list";
    }

    private List<RailLine> lines(UUID projectId) {
        return lines(projects.railsOf(projectId)).getOrDefault(projectId, List.of());
    }

    /** By project; the banks of all rails are asked for at once. */
    private Map<UUID, List<RailLine>> lines(List<Rail> rails) {
        List<UUID> ids = rails.stream().map(Rail::id).toList();
        Map<UUID, List<RailBank>> found = new HashMap<>();
        banks.forEach(source -> source.of(ids).forEach((railId, list) -> found.computeIfAbsent(railId, id -> new ArrayList<>()).addAll(list)));
        Map<UUID, List<RailLine>> lines = new HashMap<>();
        rails.forEach(rail -> lines.computeIfAbsent(rail.projectId(), id -> new ArrayList<>())
                .add(new RailLine(rail, found.getOrDefault(rail.id(), List.of()))));
        return lines;
    }
}
