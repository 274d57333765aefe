package org.stillrail.library;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
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
import org.springframework.web.multipart.MultipartFile;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.sweepfile.ReadSweep;
import org.stillrail.web.Form;

/**
 * Importing a sweep. The file stays in the browser's form until it is stored: every change of a field previews it anew and
 * stores nothing, so nothing typed and no chosen file is lost on the way.
 */
@Controller
@PreAuthorize(May.IMPORT_SWEEP)
class SweepImportController {

    private final Library library;
    private final PartCharts charts;
    private final Clock clock;

    SweepImportController(Library library, PartCharts charts, Clock clock) {
        this.library = library;
        this.charts = charts;
        this.clock = clock;
    }

    @GetMapping("/library/parts/{partId}/sweeps/new")
    String blank(@PathVariable UUID partId, @AuthenticationPrincipal CurrentPerson person, Model model) {
        Form form = Form.empty()
                .with("fixture", "shunt-through").with("measuredBy", person.displayName()).with("measuredOn", LocalDate.now(clock).toString())
                .with("bias", "0 V").with("temperature", "25 degC").with("port", "1");
        model.addAttribute("part", library.require(partId));
        fields(form, null, model);
        return "library/sweep-new";
    }

    @PostMapping("/library/parts/{partId}/sweeps/preview")
    String preview(
            @PathVariable UUID partId, @RequestParam(required = false) MultipartFile file,
            @RequestParam MultiValueMap<String, String> parameters, Model model) {
        Part part = library.require(partId);
        Form form = Form.of(parameters);
        Upload upload = Upload.read(file, form);
        fields(form, upload, model);
        model.addAttribute("part", part);
        if (upload.readable()) {
            model.addAttribute("charts", charts.preview(part.document(), upload.fileName(), upload.sweep().impedance()));
        }
        return "library/sweep-preview :: preview";
    }

    @PostMapping("/library/parts/{partId}/sweeps")
    String store(
            @PathVariable UUID partId, @RequestParam(required = false) MultipartFile file,
            @RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson person, Model model,
            HttpServletResponse response) {
        Part part = library.require(partId);
        Form form = Form.of(parameters);
        Upload upload = Upload.read(file, form);
        SweepProvenance provenance = ProvenanceForm.read(form);
        if (!upload.readable()) {
            form.errors().add("file", upload.problem());
        }
        if (!form.errors().none()) {
            fields(form, upload, model);
            model.addAttribute("part", part);
            return "library/sweep-preview :: provenance";
        }
        ReadSweep read = upload.sweep();
        SweepDocument document = new SweepDocument(provenance, read.format(), upload.mapping() == null ? null : upload.mapping().toText(),
                read.referenceOhm(), read.warnings(), read.frequencyHz(), read.resistanceOhm(), read.reactanceOhm(), null);
        Sweep sweep = library.importSweep(partId, upload.fileName(), upload.bytes(), document, person);
        response.setHeader("HX-Redirect", "/library/sweeps/" + sweep.id());
        return "library/sweep-preview :: stored";
    }

    private void fields(Form form, Upload upload, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        model.addAttribute("upload", upload);
        model.addAttribute("same", upload == null ? List.of() : library.sameBytes(upload.sha256()));
        model.addAttribute("fixtures", ProvenanceForm.fixtures());
        model.addAttribute("kinds", ColumnForm.kinds());
    }
}
