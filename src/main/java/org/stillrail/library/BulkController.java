package org.stillrail.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.springframework.http.ResponseEntity;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.web.Download;
import org.stillrail.web.StaleVersionException;

/** Parts in bulk: out as CSV, in with a preview. The text stays on the page until it is stored. */
@Controller
class BulkController {

    private final Library library;
    private final Parts parts;

    BulkController(Library library, Parts parts) {
        this.library = library;
        this.parts = parts;
    }

    @GetMapping("/library/parts.csv")
    @PreAuthorize(May.READ)
    ResponseEntity<byte[]> export() {
        return Download.of("parts.csv", Download.CSV, PartsCsv.write(parts.allDocuments()));
    }

    @GetMapping("/library/bulk")
    @PreAuthorize(May.PROPOSE_PART)
    String blank(Model model) {
        return page("", null, null, model);
    }

    /** Stores nothing. */
    @PostMapping("/library/bulk/preview")
    @PreAuthorize(May.PROPOSE_PART)
    String preview(
            @RequestParam(required = false) MultipartFile file, @RequestParam(defaultValue = "") String csv,
            @AuthenticationPrincipal CurrentPerson person, Model model) {
        return planned(file == null || file.isEmpty() ? csv : text(file), null, person, model);
    }

    @PostMapping("/library/bulk")
    @PreAuthorize(May.PROPOSE_PART)
    String store(
            @RequestParam(defaultValue = "") String csv, @RequestParam(defaultValue = "") String seen,
            @AuthenticationPrincipal CurrentPerson person, Model model, RedirectAttributes redirect) {
        BulkPlan plan;
        try {
            plan = BulkPlan.of(PartsCsv.read(csv), library, person);
        } catch (IllegalArgumentException e) {
            return page(csv, null, e.getMessage(), model);
        }
        if (!plan.possible() || !plan.fingerprint().equals(seen)) {
            return page(csv, plan, plan.possible() ? "The table or the library has changed since the preview. Look again; nothing was stored." : null, model);
        }
        try {
            library.carryOut(plan, person);
        } catch (StaleVersionException | PartNumberTakenException e) {
            return planned(csv, "Somebody changed the library at the same moment. Look again; nothing was stored.", person, model);
        }
        redirect.addFlashAttribute("notice", plan.count("NEW") + " parts are proposed, " + plan.count("REVISION") + " revised, "
                + plan.count("UNCHANGED") + " were the same already.");
        return "redirect:/library";
    }

    private String planned(String csv, String problem, CurrentPerson person, Model model) {
        try {
            return page(csv, BulkPlan.of(PartsCsv.read(csv), library, person), problem, model);
        } catch (IllegalArgumentException e) {
            return page(csv, null, e.getMessage(), model);
        }
    }

    private static String page(String csv, BulkPlan plan, String problem, Model model) {
        model.addAttribute("csv", csv);
        model.addAttribute("plan", plan);
        model.addAttribute("problem", problem);
        model.addAttribute("columns", PartsCsv.columns());
        return "library/bulk";
    }

    private static String text(MultipartFile file) {
        try {
            return new String(file.getBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
