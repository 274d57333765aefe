package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;

/** Banks side by side. A bank stands for its newest revision; a revision may be named instead. */
@Controller
class CompareController {

    static final int MOST = 6;

    private final Banks banks;
    private final BankInputs inputs;
    private final Projects projects;

    CompareController(Banks banks, BankInputs inputs, Projects projects) {
        this.banks = banks;
        this.inputs = inputs;
        this.projects = projects;
    }

    @GetMapping("/compare")
    String compare(
            @RequestParam(required = false) List<UUID> bank, @RequestParam(required = false) List<UUID> revision, Model model) {
        List<Bank> chosen = new ArrayList<>();
        if (bank != null) {
            bank.stream().distinct().limit(MOST + 1).forEach(id -> chosen.add(banks.require(id)));
        }
        if (revision != null) {
            revision.stream().distinct().limit(MOST + 1).forEach(id -> chosen.add(banks.requireRevision(id)));
        }
        if (chosen.size() < 2 || chosen.size() > MOST) {
            model.addAttribute("problem", "Choose two to six banks to compare; " + (chosen.size() > MOST ? "more" : chosen.size()) + " were chosen.");
            return "bank/compare";
        }
        List<Comparison.Entry> entries = new ArrayList<>();
        for (Bank each : chosen) {
            try {
                entries.add(new Comparison.Entry(each, where(each), Evaluation.evaluate(inputs.ofRecord(each).input())));
            } catch (IllegalArgumentException e) {
                model.addAttribute("problem", "Bank " + each.name() + ", revision " + each.revision().number() + ", cannot be evaluated: " + e.getMessage() + ".");
                return "bank/compare";
            }
        }
        model.addAttribute("comparison", Comparison.of(entries));
        return "bank/compare";
    }

    private String where(Bank bank) {
        if (bank.isScratch()) {
            return "scratch bank of " + bank.owner();
        }
        Rail rail = projects.requireRailRevision(bank.document().railRevisionId());
        return projects.require(rail.projectId()).name() + ", " + rail.name();
    }
}
