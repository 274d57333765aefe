package org.stillrail.library;

import java.time.LocalDate;
import java.util.List;
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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.electrical.quality.Finding;
import org.stillrail.electrical.quality.FindingKind;
import org.stillrail.web.Form;
import org.stillrail.web.NotFoundException;
import org.stillrail.web.StaleVersionException;

/** One sweep: what was measured, how, how far it can be trusted, and the raw file it came from. */
@Controller
class SweepController {

    private final Library library;
    private final PartCharts charts;
    private final SweepFits fits;

    SweepController(Library library, PartCharts charts, SweepFits fits) {
        this.library = library;
        this.charts = charts;
        this.fits = fits;
    }

    @GetMapping("/library/sweeps/{sweepId}")
    String show(@PathVariable UUID sweepId, Model model) {
        return page(require(sweepId), Form.empty(), model);
    }

    @PostMapping("/library/sweeps/{sweepId}/findings/accept")
    @PreAuthorize(May.VET)
    String accept(
            @PathVariable UUID sweepId, @RequestParam MultiValueMap<String, String> parameters,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        Sweep sweep = require(sweepId);
        Form form = Form.of(parameters);
        FindingKind kind = form.read("kind", "Finding", true, FindingKind::valueOf);
        String reason = form.text("reason", "The reason", true);
        Finding finding = view(sweep).findings().stream().filter(found -> found.kind() == kind).findFirst().orElse(null);
        if (kind != null && finding == null) {
            form.errors().add("", "This sweep has no such finding.");
        }
        if (!form.errors().none()) {
            return page(sweep, form, model);
        }
        try {
            library.acceptFinding(sweep, finding, reason, person);
        } catch (StaleVersionException e) {
            form.errors().add("", e.getReason());
            return page(sweep, form, model);
        }
        redirect.addFlashAttribute("notice", "The finding is accepted; the reason stands beside it.");
        return "redirect:/library/sweeps/" + sweepId;
    }

    @GetMapping("/library/sweeps/{sweepId}/raw")
    ResponseEntity<byte[]> raw(@PathVariable UUID sweepId) {
        Sweep sweep = require(sweepId);
        return RawFiles.download(sweep.fileName(), library.rawOf(sweep.rawSha256()));
    }

    private String page(Sweep sweep, Form form, Model model) {
        Part part = library.require(sweep.partId());
        SweepView view = view(sweep);
        model.addAttribute("sweep", sweep);
        model.addAttribute("part", part);
        model.addAttribute("view", view);
        model.addAttribute("findings", FindingLine.of(view.findings(), library.acceptancesOf(sweep.id())));
        model.addAttribute("same", library.twins(sweep.rawSha256(), sweep.partId()).stream()
                .filter(twin -> !twin.sweep().id().equals(sweep.id())).toList());
        model.addAttribute("charts", charts.of(part.document(), List.of(sweep), List.of()));
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        return "library/sweep";
    }

    private SweepView view(Sweep sweep) {
        PartDocument part = library.require(sweep.partId()).document();
        List<Sweep> earlier = library.sweepsOf(sweep.partId()).stream().filter(other -> isEarlier(other, sweep)).toList();
        return SweepView.of(fits.of(sweep), sweep.document(), part, earlier, charts.sheet(part, sweep.startHz(), sweep.stopHz()));
    }

    /** By the day of the measurement where both are known; on one day, by import. */
    private static boolean isEarlier(Sweep other, Sweep sweep) {
        LocalDate one = other.provenance().measuredOn();
        LocalDate two = sweep.provenance().measuredOn();
        if (one != null && two != null && !one.equals(two)) {
            return one.isBefore(two);
        }
        return other.importedAt().isBefore(sweep.importedAt());
    }

    private Sweep require(UUID sweepId) {
        return library.findSweep(sweepId).orElseThrow(() -> new NotFoundException("There is no sweep with this address."));
    }
}
