package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;
import org.stillrail.web.SearchWords;

/** Banks side by side. A bank stands for its newest revision; a revision may be named instead. */
@Controller
class CompareController {

    /** Enough to read through; whoever sees more says more. */
    private static final int FOUND = 20;

    private final Banks banks;
    private final FindBanks search;
    private final BankInputs inputs;
    private final Projects projects;

    CompareController(Banks banks, FindBanks search, BankInputs inputs, Projects projects) {
        this.banks = banks;
        this.search = search;
        this.inputs = inputs;
        this.projects = projects;
    }

    @GetMapping("/compare")
    String compare(
            @RequestParam(required = false) List<UUID> bank, @RequestParam(required = false) List<UUID> revision,
            @RequestParam(defaultValue = "") String find, Model model) {
        CompareChoice choice = CompareChoice.of(bank, revision);
        model.addAttribute("choice", choice);
        model.addAttribute("wanted", find);
        if (!find.isBlank()) {
            List<FindBanks.Match> found = search.matchesAnywhere(SearchWords.of(find), FOUND + 1 + CompareChoice.MOST).stream()
                    .filter(match -> !choice.banks().contains(match.id())).toList();
            model.addAttribute("found", found.stream().limit(FOUND).toList());
            model.addAttribute("more", found.size() > FOUND);
        }
        if (choice.size() > CompareChoice.MOST) {
            model.addAttribute("problem", "Choose two to six banks to compare; more were chosen.");
            return "bank/compare";
        }
        List<Bank> chosen = Stream.concat(choice.banks().stream().map(banks::require), choice.revisions().stream().map(banks::requireRevision)).toList();
        model.addAttribute("chosen", chosen.stream().map(each -> each.name() + ", " + where(each)).toList());
        if (choice.mayCompare()) {
            compare(chosen, model);
        }
        return "bank/compare";
    }

    private void compare(List<Bank> chosen, Model model) {
        List<Comparison.Entry> entries = new ArrayList<>();
        for (Bank each : chosen) {
            try {
                entries.add(new Comparison.Entry(each, where(each), Evaluation.evaluate(inputs.ofRecord(each).input())));
            } catch (IllegalArgumentException e) {
                model.addAttribute("problem", "Bank " + each.name() + ", revision " + each.revision().number() + ", cannot be evaluated: " + e.getMessage() + ".");
                return;
            }
        }
        model.addAttribute("comparison", Comparison.of(entries));
    }

    private String where(Bank bank) {
        if (bank.isScratch()) {
            return "scratch bank of " + bank.owner();
        }
        Rail rail = projects.requireRailRevision(bank.document().railRevisionId());
        return projects.require(rail.projectId()).name() + ", " + rail.name();
    }
}
