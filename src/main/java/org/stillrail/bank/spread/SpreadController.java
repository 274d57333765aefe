package org.stillrail.bank.spread;

import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.stillrail.account.May;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankInputs;
import org.stillrail.bank.Banks;
import org.stillrail.bank.RecordedInput;
import org.stillrail.electrical.evaluation.BankSpread;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.evaluation.EvaluationRefusedException;
import org.stillrail.electrical.evaluation.SpreadQuestion;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.web.Computing;
import org.stillrail.web.Download;
import org.stillrail.web.Form;
import org.stillrail.web.NoAnswerException;
import org.stillrail.web.Quantity;

/** Random banks of one revision: the page, and its numbers as CSV. All that is asked stands in the address. */
@Controller
@RequestMapping("/banks/{bankId}/revisions/{number}")
@PreAuthorize(May.READ)
class SpreadController {

    /** The result does not depend on it; other people's requests have the other cores. */
    private static final int THREADS = 1;

    /** A page may take longer than a call of the API: on a busy machine many banks do. */
    private static final Duration LONGEST = Duration.ofSeconds(10);
    private static final Duration LONGEST_WITH_STEP = Duration.ofSeconds(30);

    private final Banks banks;
    private final BankInputs inputs;
    private final Computing computing;

    SpreadController(Banks banks, BankInputs inputs, Computing computing) {
        this.banks = banks;
        this.inputs = inputs;
        this.computing = computing;
    }

    /** Both from one input. */
    private record Drawn(BankSpread spread, Evaluation evaluation) {
    }

    @GetMapping("/spread")
    String show(@PathVariable UUID bankId, @PathVariable int number, @RequestParam MultiValueMap<String, String> parameters, Model model) {
        Bank bank = banks.require(bankId, number);
        if (parameters.isEmpty()) {
            return "redirect:/banks/" + bankId + "/revisions/" + number + "/spread" + SpreadForm.query(SpreadQuestion.USUAL);
        }
        Form form = Form.of(parameters);
        RecordedInput recorded = inputs.ofRecord(bank);
        SpreadQuestion question = SpreadForm.read(form);
        if (question != null) {
            try {
                Drawn drawn = draw(recorded.input(), question);
                model.addAttribute("view", SpreadView.of(drawn.spread(), drawn.evaluation()));
                model.addAttribute("query", SpreadForm.query(question));
            } catch (EvaluationRefusedException e) {
                form.errors().add("", "This bank cannot be drawn from: " + e.getMessage() + ".");
            } catch (NoAnswerException e) {
                form.errors().add("runs", noAnswer(e));
            }
        }
        model.addAttribute("bank", bank);
        model.addAttribute("origin", recorded.origin() + "; SHA-256 of the input " + recorded.sha256() + ".");
        choices(recorded.input().rail(), model);
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        return "bank/spread";
    }

    @GetMapping("/spread.csv")
    ResponseEntity<byte[]> csv(@PathVariable UUID bankId, @PathVariable int number, @RequestParam MultiValueMap<String, String> parameters) {
        Bank bank = banks.require(bankId, number);
        Form form = Form.of(parameters);
        SpreadQuestion question = parameters.isEmpty() ? SpreadQuestion.USUAL : SpreadForm.read(form);
        if (question == null) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, String.join("; ", form.errors().all().values()));
        }
        RecordedInput recorded = inputs.ofRecord(bank);
        try {
            BankSpread spread = computing.within(longest(question), () -> BankSpread.of(recorded.input(), question, THREADS));
            return Download.of(bank.name() + " rev " + bank.revision().number() + " spread.csv", Download.CSV,
                    SpreadCsv.of(spread, comments(bank, recorded, question, spread)));
        } catch (EvaluationRefusedException e) {
            throw new ResponseStatusException(HttpStatus.UNPROCESSABLE_CONTENT, "This bank cannot be drawn from: " + e.getMessage() + ".", e);
        } catch (NoAnswerException e) {
            throw new ResponseStatusException(HttpStatus.SERVICE_UNAVAILABLE, noAnswer(e), e);
        }
    }

    private Drawn draw(EvaluationInput input, SpreadQuestion question) {
        return computing.within(longest(question), () -> new Drawn(BankSpread.of(input, question, THREADS), Evaluation.evaluate(input)));
    }

    private static Duration longest(SpreadQuestion question) {
        return question.loadStep() ? LONGEST_WITH_STEP : LONGEST;
    }

    /** @throws NoAnswerException where the program is at fault, for whoever logs it */
    private static String noAnswer(NoAnswerException e) {
        if (e.getCause() != null) {
            throw e;
        }
        return e.getMessage();
    }

    private static List<String> comments(Bank bank, RecordedInput recorded, SpreadQuestion question, BankSpread spread) {
        List<String> comments = recorded.comments(bank);
        comments.addAll(List.of(
                question.runs() + " random banks, seed " + question.seed() + "; tolerances " + SpreadForm.words(question.shape()) + "; parts of a branch "
                        + (question.lots() ? "from one lot" : "each by itself") + "; ambient " + spread.surroundings().conditions().ambientC()
                        + " degC, input " + spread.surroundings().conditions().inputV() + " V, parts " + (question.old() ? "at the end of life" : "new")
                        + (question.stress() ? "; stress of each branch's parts drawn too" : "") + (question.loadStep() ? "; load step drawn too" : ""),
                "ESR and |Z| at the crossover of " + spread.frequencies().crossoverHz() + " Hz and at the switching frequency of "
                        + spread.frequencies().switchingHz() + " Hz; shares with the 95 % interval of Clopper and Pearson"));
        comments.addAll(spread.unknown());
        return comments;
    }

    private static void choices(RailFigures rail, Model model) {
        model.addAttribute("shapes", SpreadForm.shapes());
        model.addAttribute("partChoices", SpreadForm.parts());
        model.addAttribute("ages", SpreadForm.ages());
        model.addAttribute("further", SpreadForm.further());
        model.addAttribute("ambients", rail.ambient() == null
                ? SpreadForm.places("not stated: 25 \u00b0C", "not stated: 25 \u00b0C", "not stated: 25 \u00b0C")
                : SpreadForm.places("lowest, " + Quantity.format(rail.ambient().minimumC(), "degC"), "nominal, " + Quantity.format(rail.ambient().nominalC(), "degC"),
                        "highest, " + Quantity.format(rail.ambient().maximumC(), "degC")));
        model.addAttribute("inputs", SpreadForm.places("lowest, " + Quantity.format(rail.input().minimumV(), "V"),
                "nominal, " + Quantity.format(rail.input().nominalV(), "V"), "highest, " + Quantity.format(rail.input().maximumV(), "V")));
    }
}
