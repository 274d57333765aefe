package org.stillrail.audit;

import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Shows the trail; everyone signed in may read it. */
@Controller
class AuditController {

    private static final int PAGE = 50;

    private final AuditEvents events;
    private final AuditChain chain;

    AuditController(AuditEvents events, AuditChain chain) {
        this.events = events;
        this.chain = chain;
    }

    @GetMapping("/audit")
    String list(@RequestParam(defaultValue = "9223372036854775807") long before, Model model) {
        List<AuditEvent> found = events.before(before, PAGE + 1);
        List<AuditEvent> shown = found.subList(0, Math.min(PAGE, found.size()));
        model.addAttribute("events", shown.stream().map(AuditRow::of).toList());
        model.addAttribute("newest", before == Long.MAX_VALUE);
        model.addAttribute("older", found.size() > PAGE ? shown.get(PAGE - 1).sequenceNumber() : null);
        return "audit/list";
    }

    @GetMapping("/audit/check")
    String check(Model model) {
        model.addAttribute("check", chain.verify());
        return "audit/check";
    }
}
