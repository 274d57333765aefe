package org.stillrail.library;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.stillrail.web.NotFoundException;

/** One sweep: what was measured, how, and the raw file it came from. */
@Controller
class SweepController {

    private final Library library;
    private final PartCharts charts;

    SweepController(Library library, PartCharts charts) {
        this.library = library;
        this.charts = charts;
    }

    @GetMapping("/library/sweeps/{sweepId}")
    String show(@PathVariable UUID sweepId, Model model) {
        Sweep sweep = require(sweepId);
        Part part = library.require(sweep.partId());
        model.addAttribute("sweep", sweep);
        model.addAttribute("part", part);
        model.addAttribute("charts", charts.of(part.document(), List.of(sweep), null));
        return "library/sweep";
    }

    @GetMapping("/library/sweeps/{sweepId}/raw")
    ResponseEntity<byte[]> raw(@PathVariable UUID sweepId) {
        Sweep sweep = require(sweepId);
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, ContentDisposition.attachment()
                        .filename(sweep.fileName(), StandardCharsets.UTF_8).build().toString())
                .contentType(MediaType.APPLICATION_OCTET_STREAM)
                .body(library.rawOf(sweep));
    }

    private Sweep require(UUID sweepId) {
        return library.findSweep(sweepId).orElseThrow(() -> new NotFoundException("There is no sweep with this address."));
    }
}
