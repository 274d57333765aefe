package org.stillrail.review;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;

/** What waits for the person who asks. */
@Controller
class WaitingController {

    private static final int DAYS_AHEAD = 30;
    private static final int MOST = 100;

    private final WaitingRows rows;
    private final Clock clock;

    WaitingController(WaitingRows rows, Clock clock) {
        this.rows = rows;
        this.clock = clock;
    }

    @GetMapping("/waiting")
    String waiting(@AuthenticationPrincipal CurrentPerson person, Model model) {
        LocalDate today = LocalDate.now(clock);
        List<WaitingRow> inReview = person.has(Role.REVIEWER) ? rows.inReview(person.id(), MOST + 1) : List.of();
        List<WaitingRow> shown = inReview.subList(0, Math.min(MOST, inReview.size()));
        model.addAttribute("more", inReview.size() > MOST);
        model.addAttribute("reviewer", person.has(Role.REVIEWER));
        model.addAttribute("toSign", shown.stream().filter(row -> row.reason() == null).toList());
        model.addAttribute("notMine", shown.stream().filter(row -> row.reason() != null).toList());
        model.addAttribute("returned", rows.returned(person.id()));
        model.addAttribute("stale", rows.stale(person.id()));
        model.addAttribute("evidenceChanged", rows.evidenceChanged(person.id()));
        model.addAttribute("ending", rows.ending(person.id(), today.plusDays(DAYS_AHEAD)));
        model.addAttribute("today", today);
        return "review/waiting";
    }
}
