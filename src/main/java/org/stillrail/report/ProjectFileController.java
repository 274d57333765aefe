package org.stillrail.report;

import java.io.IOException;
import java.util.List;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.project.Project;
import org.stillrail.project.Projects;
import org.stillrail.web.Download;

/** A whole project as one file: taken away by anyone, taken in by an administrator. */
@Controller
class ProjectFileController {

    private final ProjectFiles files;
    private final Projects projects;

    ProjectFileController(ProjectFiles files, Projects projects) {
        this.files = files;
        this.projects = projects;
    }

    @GetMapping("/projects/{projectId}/export.json")
    @PreAuthorize(May.READ)
    ResponseEntity<byte[]> export(@PathVariable UUID projectId) {
        Project project = projects.require(projectId);
        return Download.of(Download.safe(project.name()) + ".json", MediaType.APPLICATION_JSON, files.write(projectId));
    }

    @GetMapping("/projects/import")
    @PreAuthorize(May.ADMINISTER)
    String blank(Model model) {
        return page(List.of(), model);
    }

    @PostMapping("/projects/import")
    @PreAuthorize(May.ADMINISTER)
    String take(
            @RequestParam(required = false) MultipartFile file, @AuthenticationPrincipal CurrentPerson person, Model model,
            RedirectAttributes redirect) throws IOException {
        if (file == null || file.isEmpty()) {
            return page(List.of("Choose a file first."), model);
        }
        try {
            UUID projectId = files.read(file.getBytes(), person);
            redirect.addFlashAttribute("notice", "The project is taken in, with its signatures and the record of its origin. Its parts that were not here are proposed.");
            return "redirect:/projects/" + projectId;
        } catch (ProjectFiles.ConflictException e) {
            return page(e.conflicts(), model);
        } catch (IllegalArgumentException e) {
            return page(List.of(e.getMessage()), model);
        }
    }

    private static String page(List<String> conflicts, Model model) {
        model.addAttribute("conflicts", conflicts);
        return "report/import";
    }
}
