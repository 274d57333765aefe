package org.stillrail.report;

import java.util.List;
import java.util.UUID;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.stillrail.account.May;
import org.stillrail.audit.AuditEvent;
import org.stillrail.audit.AuditLines;
import org.stillrail.audit.AuditRow;
import org.stillrail.project.Projects;
import org.stillrail.web.Form;
import org.stillrail.web.NotFoundException;
import org.stillrail.web.Page;

/** What the record says of one project: this installation's lines, and beside them those of each installation where it was before. */
@Controller
class ProjectRecordController {

    private static final int PAGE_SIZE = 50;

    private final Projects projects;
    private final ProjectRowsReader reader;
    private final AuditLines lines;

    ProjectRecordController(Projects projects, ProjectRowsReader reader, AuditLines lines) {
        this.projects = projects;
        this.reader = reader;
        this.lines = lines;
    }

    @GetMapping("/projects/{projectId}/record")
    @PreAuthorize(May.READ)
    String show(@PathVariable UUID projectId, @RequestParam MultiValueMap<String, String> parameters, Model model) {
        model.addAttribute("project", projects.require(projectId));
        Form form = Form.of(parameters);
        List<String> subjects = reader.subjects(projectId);
        List<AuditLines.Source> sources = lines.sources(subjects);
        AuditLines.Source chosen = form.isBlank("chain") ? sources.get(0)
                : sources.stream().filter(source -> source.chain().equals(form.get("chain"))).findFirst()
                        .orElseThrow(() -> new NotFoundException("No record of this name speaks of this project."));
        Page page = Page.of(form, PAGE_SIZE, chosen.lines());
        List<AuditEvent> events = lines.about(subjects, chosen, page.offset(), PAGE_SIZE);
        model.addAttribute("sources", sources);
        model.addAttribute("chosen", chosen);
        model.addAttribute("broken", events.stream().filter(event -> !event.intact()).map(AuditEvent::sequenceNumber).toList());
        model.addAttribute("page", page);
        model.addAttribute("events", events.stream().map(AuditRow::of).toList());
        return "report/record";
    }
}
