package org.stillrail.report;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.server.ResponseStatusException;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankInputs;
import org.stillrail.bank.Banks;
import org.stillrail.bank.Places;
import org.stillrail.bank.RecordedInput;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationRefusedException;
import org.stillrail.library.SweepExport;
import org.stillrail.web.Download;

/** What leaves the tool for one bank revision: the report, the bill of materials, the curves. */
@Controller
@RequestMapping("/banks/{bankId}/revisions/{number}")
@PreAuthorize(May.READ)
class ReportController {

    private final Banks banks;
    private final BankReports reports;
    private final BankInputs inputs;

    ReportController(Banks banks, BankReports reports, BankInputs inputs) {
        this.banks = banks;
        this.reports = reports;
        this.inputs = inputs;
    }

    @GetMapping("/report.pdf")
    ResponseEntity<byte[]> report(@PathVariable UUID bankId, @PathVariable int number, @AuthenticationPrincipal CurrentPerson person) {
        Bank bank = banks.require(bankId, number);
        try {
            return file(bank, "pdf", MediaType.APPLICATION_PDF, reports.pdf(bank, person));
        } catch (EvaluationRefusedException e) {
            throw refused(e);
        }
    }

    @GetMapping("/bom.csv")
    ResponseEntity<byte[]> billOfMaterials(@PathVariable UUID bankId, @PathVariable int number) {
        Bank bank = banks.require(bankId, number);
        return file(bank, "bom.csv", Download.CSV, BillOfMaterials.csv(reports.parts(bank), reports.currency(bank)).getBytes(StandardCharsets.UTF_8));
    }

    @GetMapping("/curves.csv")
    ResponseEntity<byte[]> curves(@PathVariable UUID bankId, @PathVariable int number) {
        Bank bank = banks.require(bankId, number);
        RecordedInput recorded = inputs.ofRecord(bank);
        return file(bank, "curves.csv", Download.CSV, CurveTable.csv(evaluate(recorded), comments(bank, recorded)).getBytes(StandardCharsets.UTF_8));
    }

    /** The bank's impedance, one port. */
    @GetMapping("/export/{format}")
    ResponseEntity<byte[]> export(@PathVariable UUID bankId, @PathVariable int number, @PathVariable String format) {
        Bank bank = banks.require(bankId, number);
        RecordedInput recorded = inputs.ofRecord(bank);
        return SweepExport.of(format, bank.name() + " rev " + number, evaluate(recorded).curves().bank(), null, comments(bank, recorded));
    }

    private static List<String> comments(Bank bank, RecordedInput recorded) {
        List<String> comments = recorded.comments(bank);
        comments.add("Calculated at the nominal corner");
        comments.addAll(Places.sentences(recorded.input()));
        return comments;
    }

    /** Curves need no verdicts. */
    private static Evaluation evaluate(RecordedInput recorded) {
        try {
            return Evaluation.picturesOnly(recorded.input(), null);
        } catch (EvaluationRefusedException e) {
            throw refused(e);
        }
    }

    private static ResponseStatusException refused(EvaluationRefusedException e) {
        return new ResponseStatusException(HttpStatus.UNPROCESSABLE_CONTENT, "This bank cannot be evaluated: " + e.getMessage() + ".", e);
    }

    private static ResponseEntity<byte[]> file(Bank bank, String ending, MediaType type, byte[] bytes) {
        return Download.of(Download.safe(bank.name()) + " rev " + bank.revision().number() + "." + ending, type, bytes);
    }
}
