package org.stillrail.library;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
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
import org.springframework.web.multipart.MultipartFile;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.sweepfile.SweepFileException;
import org.stillrail.web.Form;

/**
 * Importing sweeps, one or many. The files stay in the browser's form until they are stored: every change of a field previews
 * them anew and stores nothing, so nothing typed and no chosen file is lost on the way.
 */
@Controller
@PreAuthorize(May.IMPORT_SWEEP)
class SweepImportController {

    private static final String NO_FILE = "Choose a file first";

    private final Library library;
    private final PartCharts charts;
    private final Uploads uploads;
    private final ImportChoices choices;
    private final SweepFits fits;
    private final Clock clock;

    SweepImportController(Library library, PartCharts charts, Uploads uploads, ImportChoices choices, SweepFits fits, Clock clock) {
        this.library = library;
        this.charts = charts;
        this.uploads = uploads;
        this.choices = choices;
        this.fits = fits;
        this.clock = clock;
    }

    @GetMapping("/library/parts/{partId}/sweeps/new")
    String blank(@PathVariable UUID partId, @AuthenticationPrincipal CurrentPerson person, Model model) {
        Form form = Form.empty()
                .with("fixture", "shunt-through").with("measuredBy", person.displayName()).with("measuredOn", LocalDate.now(clock).toString())
                .with("bias", "0 V").with("temperature", "25 degC").with("port", "1");
        fields(library.require(partId), form, null, model);
        return "library/sweep-new";
    }

    @PostMapping("/library/parts/{partId}/sweeps/preview")
    String preview(
            @PathVariable UUID partId, @RequestParam(name = "file", required = false) List<MultipartFile> files,
            @RequestParam MultiValueMap<String, String> parameters, Model model) {
        Part part = library.require(partId);
        Form form = Form.of(parameters);
        List<Uploads.Sent> sent;
        try {
            sent = Uploads.unpacked(files);
        } catch (SweepFileException e) {
            fields(part, form, Upload.refused("The archive", new byte[0], e.getMessage()), model);
            return "library/sweep-preview :: preview";
        }
        if (sent.size() > 1) {
            List<UploadLine> lines = new ArrayList<>();
            Map<String, String> fileBySha = new HashMap<>();
            for (Uploads.Sent file : sent) {
                Upload upload = uploads.read(file, fresh(form));
                lines.add(line(part, upload, fileBySha.putIfAbsent(upload.sha256(), upload.fileName())));
            }
            model.addAttribute("lines", lines);
            fields(part, form, null, model);
            return "library/sweep-preview :: many";
        }
        Upload upload = sent.isEmpty() ? Upload.refused("", new byte[0], NO_FILE) : uploads.read(sent.get(0), form);
        fields(part, form, upload, model);
        if (upload.readable()) {
            SweepDocument document = upload.document(ProvenanceForm.read(fresh(form)));
            SweepFit fit = fits.of(document.impedance());
            model.addAttribute("charts", charts.preview(part.document(), upload.fileName(), upload.sweep().impedance()));
            model.addAttribute("view", SweepView.of(fit, document, part.document(), library.sweepsOf(partId),
                    charts.sheet(part.document(), fit.curve().grid().startHz(), fit.curve().grid().stopHz())));
        }
        return "library/sweep-preview :: preview";
    }

    @PostMapping("/library/parts/{partId}/sweeps")
    String store(
            @PathVariable UUID partId, @RequestParam(name = "file", required = false) List<MultipartFile> files,
            @RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson person, Model model,
            HttpServletResponse response) {
        Part part = library.require(partId);
        Form form = Form.of(parameters);
        SweepProvenance provenance = ProvenanceForm.read(form);
        SetupForm.read(form);
        List<Uploads.Sent> sent = List.of();
        try {
            sent = Uploads.unpacked(files);
        } catch (SweepFileException e) {
            form.errors().add("file", e.getMessage());
        }
        if (sent.size() > 1) {
            return form.errors().none() ? many(part, sent, form, provenance, person, model) : again(part, form, null, model);
        }
        Upload upload = sent.isEmpty() ? Upload.refused("", new byte[0], NO_FILE) : uploads.read(sent.get(0), form);
        if (!upload.readable()) {
            form.errors().add("file", upload.problem());
        }
        if (upload.readable() && form.isBlank("storeAgain") && before(upload, library.twins(upload.sha256(), part.id())) != null) {
            form.errors().add("storeAgain", "The same bytes are stored for this part already");
            form.errors().add("", "The same bytes are stored for this part already.");
        }
        String mappingName = form.text("saveMappingAs", "Name of the mapping", false);
        if (mappingName != null && form.errors().none() && upload.mapping() != null && !choices.save(mappingName, upload.mapping(), person)) {
            form.errors().add("saveMappingAs", "There is a mapping of the name '" + mappingName + "' already");
            form.errors().add("", "There is a mapping of the name '" + mappingName + "' already.");
        }
        if (!form.errors().none()) {
            return again(part, form, upload, model);
        }
        Sweep sweep = library.importSweep(partId, upload.fileName(), upload.bytes(), upload.document(provenance), person);
        response.setHeader("HX-Redirect", "/library/sweeps/" + sweep.id());
        return "library/sweep-preview :: stored";
    }

    /** Stores what can be read and says of each file what became of it. What tells the same from the same bytes is not stored twice. */
    private String many(Part part, List<Uploads.Sent> sent, Form form, SweepProvenance provenance, CurrentPerson person, Model model) {
        List<UploadLine> lines = new ArrayList<>();
        int stored = 0;
        for (Uploads.Sent file : sent) {
            Upload upload = uploads.read(file, fresh(form));
            UploadLine line = line(part, upload, null);
            if (upload.readable() && line.before() == null) {
                SweepProvenance own = provenance.sample() == null ? provenance.ofSample(bare(upload.fileName())) : provenance;
                Sweep sweep = library.importSweep(part.id(), upload.fileName(), upload.bytes(), upload.document(own), person);
                line = UploadLine.read(upload, sweep, null, line.elsewhere(), null);
                stored++;
            }
            lines.add(line);
        }
        model.addAttribute("lines", lines);
        model.addAttribute("storedCount", stored);
        fields(part, form, null, model);
        return "library/sweep-preview :: manyStored";
    }

    private String again(Part part, Form form, Upload upload, Model model) {
        fields(part, form, upload, model);
        return "library/sweep-preview :: provenance";
    }

    private UploadLine line(Part part, Upload upload, String twinFile) {
        List<Twin> twins = library.twins(upload.sha256(), part.id());
        Twin before = before(upload, twins);
        List<Twin> elsewhere = twins.stream().filter(twin -> twin != before).toList();
        return UploadLine.read(upload, null, before, elsewhere, twinFile);
    }

    /** A sweep of the part that tells the same from the same bytes, or null. */
    private static Twin before(Upload upload, List<Twin> twins) {
        return !upload.readable() ? null : twins.stream().filter(twin -> twin.repeats(upload.sweep())).findFirst().orElse(null);
    }

    /** Columns corrected for one file do not speak for another. */
    private static Form fresh(Form form) {
        return form.without(name -> name.equals("columnsOf"));
    }

    private static String bare(String fileName) {
        int dot = fileName.lastIndexOf('.');
        return dot > 0 ? fileName.substring(0, dot) : fileName;
    }

    private void fields(Part part, Form form, Upload upload, Model model) {
        model.addAttribute("part", part);
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        model.addAttribute("upload", upload);
        model.addAttribute("same", upload == null ? List.of() : library.twins(upload.sha256(), part.id()));
        model.addAttribute("fixtures", ProvenanceForm.fixtures());
        model.addAttribute("kinds", ColumnForm.kinds());
        choices.addTo(model);
        model.addAttribute("mappings", withBlank("as found in the file", choices.mappings()));
    }

    private static Map<String, String> withBlank(String blank, Map<String, String> names) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("", blank);
        all.putAll(names);
        return all;
    }
}
