package org.stillrail.report;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.UUID;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.support.RequestContextUtils;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.account.Role;
import org.stillrail.project.NameTakenException;
import org.stillrail.project.Project;
import org.stillrail.project.Projects;
import org.stillrail.web.Download;
import org.stillrail.web.Form;
import org.stillrail.web.LargeUpload;
import org.stillrail.web.UploadLimits;

/**
 * A whole project as one file: taken away by anyone, looked at and taken in by an administrator. The file is sent both times; what is
 * taken in is the file that was looked at, which its SHA-256 shows.
 */
@Controller
class ProjectFileController {

    private static final String IMPORT = "/projects/import";
    private static final String TAKEN = "The project is taken in, with its signatures and the record of its origin. Its parts that were not here are proposed.";

    private static final String NOBODY = " No member can sign in here as an engineer: add one under Members.";
    private static final String MEMBER = "member";

    private final ProjectFiles files;
    private final Projects projects;
    private final UploadLimits limits;

    ProjectFileController(ProjectFiles files, Projects projects, UploadLimits limits) {
        this.files = files;
        this.projects = projects;
        this.limits = limits;
    }

    @Configuration(proxyBeanMethods = false)
    static class Uploads {

        @Bean
        LargeUpload projectFile() {
            return new LargeUpload(IMPORT, "The project's file");
        }
    }

    @GetMapping("/projects/{projectId}/export.json")
    @PreAuthorize(May.READ)
    ResponseEntity<byte[]> export(@PathVariable UUID projectId) {
        Project project = projects.require(projectId);
        return Download.of(Download.safe(project.name()) + ".json", MediaType.APPLICATION_JSON, files.write(projectId));
    }

    @GetMapping(IMPORT)
    @PreAuthorize(May.ADMINISTER)
    String blank(Model model) {
        return page(Form.empty(), null, List.of(), model);
    }

    /** Looks at a file; takes it in where the form asks for that and has been shown what this very file brings. */
    @PostMapping(IMPORT)
    @PreAuthorize(May.ADMINISTER)
    String take(
            @RequestParam(required = false) MultipartFile file, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, HttpServletRequest request, HttpServletResponse response) throws IOException {
        Form form = Form.of(parameters);
        if (file == null || file.isEmpty()) {
            return page(form, null, List.of("Choose a file first."), model);
        }
        try {
            ProjectFile.Received received = ProjectFile.receive(file);
            if (form.isBlank("take") || !received.sha256().equals(form.get("seen"))) {
                return look(received, form, person, model);
            }
            String name = form.text("name", "Name", true);
            if (!form.errors().none()) {
                return look(received, form, person, model);
            }
            try {
                return redirect(files.take(received, name, !form.isBlank(MEMBER), person), request, response);
            } catch (NameTakenException e) {
                form.errors().add("name", e.getMessage());
                return look(received, form, person, model);
            }
        } catch (ProjectFiles.ConflictException e) {
            return page(form, null, e.conflicts(), model);
        } catch (IllegalArgumentException e) {
            return page(form, null, List.of(e.getMessage()), model);
        }
    }

    private String look(ProjectFile.Received received, Form form, CurrentPerson person, Model model) {
        Arrival arrival = files.look(received.file());
        if (!received.sha256().equals(form.get("seen"))) {
            form.with("name", arrival.conflicts().isEmpty() ? files.freeName(arrival) : null).with("seen", received.sha256()).with(MEMBER, person.has(Role.ENGINEER) ? "yes" : null);
        }
        model.addAttribute("mayJoin", person.has(Role.ENGINEER));
        return page(form, arrival, arrival.conflicts(), model);
    }

    private String page(Form form, Arrival arrival, List<String> conflicts, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        model.addAttribute("arrival", conflicts.isEmpty() ? arrival : null);
        model.addAttribute("conflicts", conflicts);
        model.addAttribute("largestMib", limits.largestMib());
        return "report/import";
    }

    /** A script's request follows by itself where it is told to. */
    private String redirect(UUID projectId, HttpServletRequest request, HttpServletResponse response) {
        String path = "/projects/" + projectId;
        RequestContextUtils.getOutputFlashMap(request).put("notice", projects.hasEditor(projectId) ? TAKEN : TAKEN + NOBODY);
        if (request.getHeader("HX-Request") == null) {
            return "redirect:" + path;
        }
        RequestContextUtils.saveOutputFlashMap(path, request, response);
        response.setHeader("HX-Redirect", path);
        return "report/import :: taken";
    }
}
