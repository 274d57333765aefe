package org.stillrail.library;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.sweepfile.SweepFileException;
import org.stillrail.web.Form;
import org.stillrail.web.NotFoundException;

/** The fixtures: their sweeps open, shorted and loaded, stored once under a name. */
@Controller
class FixtureController {

    private final Library library;
    private final FixtureSweeps fixtures;
    private final Uploads uploads;
    private final Clock clock;

    FixtureController(Library library, FixtureSweeps fixtures, Uploads uploads, Clock clock) {
        this.library = library;
        this.fixtures = fixtures;
        this.uploads = uploads;
        this.clock = clock;
    }

    @GetMapping("/library/fixtures")
    String list(@AuthenticationPrincipal CurrentPerson person, Model model) {
        return page(Form.empty().with("measuredBy", person.displayName()).with("measuredOn", LocalDate.now(clock).toString())
                .with("fixture", "shunt-through"), model);
    }

    @PostMapping("/library/fixtures")
    @PreAuthorize(May.IMPORT_SWEEP)
    String add(
            @RequestParam(name = "file", required = false) List<MultipartFile> files, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        Form form = Form.of(parameters).with("bias", "0 V").with("temperature", "25 degC");
        String name = form.text("name", "Name", true);
        FixtureSweep.Standard standard = form.read("standard", "Standard", true, text -> FixtureSweep.Standard.valueOf(text.toUpperCase(Locale.ROOT)));
        Double loadOhm = form.positive("loadOhm", "Resistance of the load", "ohm", standard == FixtureSweep.Standard.LOAD);
        SweepProvenance provenance = ProvenanceForm.read(form);
        Upload upload = upload(files, form);
        if (!upload.readable()) {
            form.errors().add("file", upload.problem());
            form.errors().add("", upload.problem() + ".");
        }
        fixtures.withRaw(upload.sha256()).ifPresent(same -> {
            form.errors().add("file", "The same bytes are stored as '" + same.name() + "' already");
            form.errors().add("", "The same bytes are stored as '" + same.name() + "' already; choose that one where it is needed.");
        });
        if (!form.errors().none()) {
            return page(form, model);
        }
        FixtureSweep fixture = new FixtureSweep(UUID.randomUUID(), name, standard, standard == FixtureSweep.Standard.LOAD ? loadOhm : null,
                upload.sha256(), upload.fileName(), person.displayName(), OffsetDateTime.now(clock), upload.document(provenance));
        if (!library.addFixture(fixture, upload.bytes(), person)) {
            form.errors().add("name", "There is a fixture sweep of this name already");
            return page(form, model);
        }
        redirect.addFlashAttribute("notice", name + " can be chosen when a sweep is imported.");
        return "redirect:/library/fixtures";
    }

    @GetMapping("/library/fixtures/{fixtureId}/raw")
    ResponseEntity<byte[]> raw(@PathVariable UUID fixtureId) {
        FixtureSweep fixture = fixtures.find(fixtureId).orElseThrow(() -> new NotFoundException("There is no such sweep of a fixture."));
        return RawFiles.download(fixture.fileName(), library.rawOf(fixture.rawSha256()));
    }

    private Upload upload(List<MultipartFile> files, Form form) {
        try {
            List<Uploads.Sent> sent = Uploads.unpacked(files);
            return sent.size() == 1 ? uploads.read(sent.get(0), form)
                    : Upload.refused("", new byte[0], sent.isEmpty() ? "Choose a file first" : "A fixture sweep is one file, not " + sent.size());
        } catch (SweepFileException e) {
            return Upload.refused("", new byte[0], e.getMessage());
        }
    }

    private String page(Form form, Model model) {
        Map<String, String> standards = new LinkedHashMap<>();
        standards.put("open", "open");
        standards.put("short", "short");
        standards.put("load", "load");
        model.addAttribute("stored", fixtures.all());
        model.addAttribute("standards", standards);
        model.addAttribute("fixtures", ProvenanceForm.fixtures());
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        return "library/fixtures";
    }
}
