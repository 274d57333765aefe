package org.stillrail.bank.bench;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
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
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankInputs;
import org.stillrail.bank.Banks;
import org.stillrail.bank.BenchKind;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationInput;
import org.stillrail.electrical.evaluation.EvaluationRefusedException;
import org.stillrail.library.SweepIntake;
import org.stillrail.web.Form;
import org.stillrail.web.StaleVersionException;

/** The bench of one revision of a bank: records, comparison with the prediction, mountings written back, and the sheet to print. */
@Controller
class BenchController {

    private final Banks banks;
    private final BankInputs inputs;
    private final Bench bench;
    private final SweepIntake intake;
    private final Clock clock;

    BenchController(Banks banks, BankInputs inputs, Bench bench, SweepIntake intake, Clock clock) {
        this.banks = banks;
        this.inputs = inputs;
        this.bench = bench;
        this.intake = intake;
        this.clock = clock;
    }

    @GetMapping("/banks/{bankId}/revisions/{number}/bench")
    String show(@PathVariable UUID bankId, @PathVariable int number, @AuthenticationPrincipal CurrentPerson person, Model model) {
        Form form = Form.empty().with("kind", "impedance").with("fixture", "shunt-through").with("measuredBy", person.displayName())
                .with("measuredOn", LocalDate.now(clock).toString()).with("bias", "0 V").with("temperature", "25 degC")
                .with("tolerance", "20 %").with("resistanceTolerance", "50 %");
        return page(banks.require(bankId, number), form, person, model);
    }

    @PostMapping("/banks/{bankId}/revisions/{number}/bench")
    @PreAuthorize(May.SCRATCH)
    String attach(
            @PathVariable UUID bankId, @PathVariable int number, @RequestParam(name = "file", required = false) List<MultipartFile> files,
            @RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson person, Model model,
            RedirectAttributes redirect) {
        Bank bank = banks.require(bankId, number);
        banks.requireEditor(bank, person);
        Form form = Form.of(parameters);
        BenchKind kind = BenchForm.kind(form);
        SweepIntake.SentFile file = intake.file(files, form);
        BenchDocument document = kind == null || file == null ? null : BenchForm.read(kind, file, form, intake);
        if (document != null) {
            bench.sameBytes(bank, file.bytes()).ifPresent(same -> {
                form.errors().add("file", "The same bytes are attached to this revision already");
                form.errors().add("", "The same bytes are attached to this revision already, as " + same.fileName() + " (" + same.kind().label() + ").");
            });
        }
        if (!form.errors().none()) {
            return page(bank, form, person, model);
        }
        bench.attach(bank, kind, file, document, person);
        redirect.addFlashAttribute("notice", file.fileName() + " is attached to revision " + number + ".");
        return "redirect:/banks/" + bankId + "/revisions/" + number + "/bench";
    }

    @PostMapping("/banks/{bankId}/revisions/{number}/bench/{recordId}/mounting")
    @PreAuthorize(May.SCRATCH)
    String writeBack(
            @PathVariable UUID bankId, @PathVariable int number, @PathVariable UUID recordId,
            @RequestParam MultiValueMap<String, String> parameters, @AuthenticationPrincipal CurrentPerson person, Model model,
            RedirectAttributes redirect) {
        Bank bank = banks.require(bankId, number);
        BenchRecord record = bench.require(bank, recordId);
        Form form = Form.of(parameters);
        Long version = form.read("version", "Version", true, Long::valueOf);
        if (record.kind() != BenchKind.IMPEDANCE) {
            form.errors().add("", "Mountings are fitted to an impedance only.");
        }
        if (!form.errors().none()) {
            return page(bank, form, person, model);
        }
        try {
            Bank saved = bench.writeBack(bank, version, ImpedanceView.fit(record, inputs.of(bank.document()), intake.trust(record.document().sweep(), record.document().sweep().impedance())), record, person);
            redirect.addFlashAttribute("notice", "Saved as revision " + saved.latestNumber() + " with the fitted mountings.");
            return "redirect:/banks/" + bankId;
        } catch (StaleVersionException e) {
            form.errors().add("", e.getReason());
            return page(bank, form, person, model);
        }
    }

    @GetMapping("/banks/{bankId}/revisions/{number}/bench/{recordId}/raw")
    ResponseEntity<byte[]> raw(@PathVariable UUID bankId, @PathVariable int number, @PathVariable UUID recordId) {
        BenchRecord record = bench.require(banks.require(bankId, number), recordId);
        return intake.raw(record.fileName(), record.rawSha256());
    }

    @GetMapping("/banks/{bankId}/revisions/{number}/bench/sheet")
    String sheet(@PathVariable UUID bankId, @PathVariable int number, Model model) {
        Bank bank = banks.require(bankId, number);
        model.addAttribute("bank", bank);
        try {
            model.addAttribute("sheet", BenchSheet.of(Evaluation.picturesOnly(inputs.of(bank.document()), null)));
        } catch (EvaluationRefusedException e) {
            model.addAttribute("refused", e.getMessage());
        }
        return "bank/sheet";
    }

    private String page(Bank bank, Form form, CurrentPerson person, Model model) {
        List<BenchRecord> records = bench.of(bank);
        List<String> problems = new ArrayList<>();
        List<ImpedanceView> impedances = new ArrayList<>();
        List<TraceView> traces = new ArrayList<>();
        if (!records.isEmpty()) {
            compare(bank, records, impedances, traces, problems);
        }
        model.addAttribute("bank", bank);
        model.addAttribute("records", records);
        model.addAttribute("impedances", impedances);
        model.addAttribute("traces", traces);
        model.addAttribute("problems", problems);
        boolean mayAttach = banks.mayEdit(bank, person);
        model.addAttribute("mayAttach", mayAttach);
        model.addAttribute("mayEdit", mayAttach && bank.isLatest());
        model.addAttribute("benchKinds", BenchForm.kinds());
        intake.addChoicesTo(model);
        model.addAttribute("form", form);
        model.addAttribute("errors", form.errors());
        return "bank/bench";
    }

    private void compare(Bank bank, List<BenchRecord> records, List<ImpedanceView> impedances, List<TraceView> traces, List<String> problems) {
        EvaluationInput input;
        Evaluation evaluation;
        try {
            input = inputs.of(bank.document());
            evaluation = Evaluation.picturesOnly(input, null);
        } catch (EvaluationRefusedException e) {
            problems.add(e.getMessage());
            return;
        }
        for (BenchRecord record : records) {
            try {
                if (record.kind() == BenchKind.IMPEDANCE) {
                    impedances.add(ImpedanceView.of(record, input, evaluation.frequencies(), intake));
                } else {
                    traces.add(TraceView.of(record, evaluation));
                }
            } catch (IllegalArgumentException e) {
                problems.add(record.fileName() + ": " + e.getMessage());
            }
        }
    }
}
