package org.stillrail.bank;

import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.web.Form;
import org.stillrail.web.NotFoundException;
import org.stillrail.web.Page;

/** One page for each changed part: every bank that uses it, with its verdicts before and after. Worked out when asked, a few at a time. */
@Controller
class PartEffectController {

    /** Each takes two evaluations. */
    private static final int PAGE_SIZE = 10;

    private final Library library;
    private final BankEvidence evidence;
    private final PartEffects effects;

    PartEffectController(Library library, BankEvidence evidence, PartEffects effects) {
        this.library = library;
        this.evidence = evidence;
        this.effects = effects;
    }

    @GetMapping("/library/parts/{partId}/effects")
    String show(@PathVariable UUID partId, @RequestParam MultiValueMap<String, String> parameters, Model model) {
        Part part = library.find(partId).orElseThrow(() -> new NotFoundException("There is no part with this address."));
        List<BankEvidence.Use> uses = evidence.usesOf(partId);
        Page page = Page.of(Form.of(parameters), PAGE_SIZE, uses.size());
        model.addAttribute("part", part);
        model.addAttribute("page", page);
        model.addAttribute("changed", uses.stream().filter(BankEvidence.Use::changed).count());
        model.addAttribute("effects", uses.subList(page.offset(), page.offset() + Math.min(PAGE_SIZE, uses.size() - page.offset())).stream()
                .map(use -> effects.of(use, part)).toList());
        return "bank/effects";
    }
}
