package org.stillrail.bank;

import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.web.Form;

/** For whoever reviews: what is new in a revision of a bank. */
@Controller
class BankDifferencesController {

    private final Banks banks;
    private final BankInputs inputs;

    BankDifferencesController(Banks banks, BankInputs inputs) {
        this.banks = banks;
        this.inputs = inputs;
    }

    @GetMapping("/banks/{bankId}/revisions/{number}/differences")
    String show(@PathVariable UUID bankId, @PathVariable int number, @RequestParam MultiValueMap<String, String> parameters, Model model) {
        Bank after = banks.require(bankId, number);
        Integer from = Form.of(parameters).whole("from", "Revision", 1, Integer.MAX_VALUE, false);
        Bank before = banks.require(bankId, from == null ? Math.max(1, number - 1) : from);
        model.addAttribute("before", before);
        model.addAttribute("after", after);
        try {
            model.addAttribute("differences", BankDifferences.between(
                    Evaluation.evaluate(inputs.ofRecord(before).input()), Evaluation.evaluate(inputs.ofRecord(after).input())));
        } catch (IllegalArgumentException e) {
            model.addAttribute("problem", "One of the two cannot be evaluated: " + e.getMessage() + ".");
        }
        return "bank/differences";
    }
}
