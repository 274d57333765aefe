package org.stillrail.report;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.stillrail.account.CurrentPerson;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankEvidence;
import org.stillrail.bank.BankInputs;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.project.Projects;
import org.stillrail.project.Rail;
import org.stillrail.project.RailFacts;
import org.stillrail.review.ReviewRecord;
import org.stillrail.review.ReviewRecords;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/** Puts the report of a bank revision together and prints it. */
@Component
class BankReports {

    private final BankInputs inputs;
    private final BankEvidence evidence;
    private final Library library;
    private final Projects projects;
    private final ReviewRecords reviews;
    private final ITemplateEngine templates;
    private final Clock clock;

    BankReports(
            BankInputs inputs, BankEvidence evidence, Library library, Projects projects, ReviewRecords reviews, ITemplateEngine templates, Clock clock) {
        this.inputs = inputs;
        this.evidence = evidence;
        this.library = library;
        this.projects = projects;
        this.reviews = reviews;
        this.templates = templates;
        this.clock = clock;
    }

    /** @throws org.stillrail.electrical.evaluation.EvaluationRefusedException with a sentence, where the physics refuses the bank */
    byte[] pdf(Bank bank, CurrentPerson person) {
        return PdfWriter.write(xhtml(report(bank, person)));
    }

    String xhtml(BankReport report) {
        Context context = new Context(Locale.ROOT);
        context.setVariable("report", report);
        return templates.process("report/bank-report", context);
    }

    BankReport report(Bank bank, CurrentPerson person) {
        Rail rail = bank.isScratch() ? null : projects.requireRailRevision(bank.document().railRevisionId());
        ReviewRecord review = bank.isScratch() ? new ReviewRecord(null, List.of(), List.of(), List.of()) : reviews.of(bank);
        Evaluation evaluation = Evaluation.evaluate(inputs.ofRecord(bank).input());
        List<PartLine> parts = parts(bank);
        return new BankReport(bank, rail == null ? null : projects.require(rail.projectId()), rail,
                RailFacts.of(evaluation.input().rail(), evaluation.input().settings().currencyUnit()), parts, evaluation, BankReport.verdicts(evaluation), ReportCharts.of(evaluation),
                EvidenceLine.of(parts, library), review, cautions(bank, rail, parts, evaluation, review),
                OffsetDateTime.now(clock).withOffsetSameInstant(ZoneOffset.UTC), person.displayName());
    }

    List<PartLine> parts(Bank bank) {
        return bank.document().branches().stream()
                .map(branch -> new PartLine(
                        branch, branch.partId() == null ? null : revision(branch.partRevisionId()),
                        branch.alternates() == null ? List.of()
                                : branch.alternates().stream().map(alternate -> revision(alternate.partRevisionId())).toList()))
                .toList();
    }

    private List<String> cautions(Bank bank, Rail rail, List<PartLine> parts, Evaluation evaluation, ReviewRecord review) {
        List<String> cautions = new ArrayList<>(ReportCautions.ofRevision(bank, rail));
        cautions.addAll(ReportCautions.ofParts(evidence.changesOf(bank.revision().id()), parts));
        cautions.addAll(ReportCautions.ofReview(review, LocalDate.now(clock)));
        cautions.addAll(evaluation.warnings());
        return cautions;
    }

    /** Unit of the costs, empty where none is said: for a submitted revision what was said then. */
    String currency(Bank bank) {
        return inputs.ofRecord(bank).input().settings().currencyUnit();
    }

    private Part revision(UUID partRevisionId) {
        return library.findRevision(partRevisionId).orElseThrow();
    }
}
