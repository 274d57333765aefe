package org.stillrail.report;

import java.time.OffsetDateTime;
import java.util.List;
import org.stillrail.bank.Bank;
import org.stillrail.bank.Places;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Verdict;
import org.stillrail.project.Project;
import org.stillrail.project.Rail;
import org.stillrail.project.RailFacts;
import org.stillrail.review.ReviewRecord;
import org.stillrail.web.Quantity;

/**
 * All that the report of one bank revision prints.
 *
 * @param charts   as SVG
 * @param cautions sentences that a reader outside the tool must see
 */
record BankReport(
        Bank bank, Project project, Rail rail, List<RailFacts.Fact> facts, List<PartLine> parts, Evaluation evaluation, List<VerdictLine> verdicts,
        List<String> charts, List<EvidenceLine> evidence, ReviewRecord review, List<String> cautions, OffsetDateTime printedAt, String printedBy) {

    /** A verdict in the report's words. */
    record VerdictLine(
            String name, String outcome, String limit, String value, String margin, String corner, String sentence, String source) {

        static VerdictLine of(Verdict verdict) {
            return new VerdictLine(verdict.requirement().label(), verdict.outcome().label(), show(verdict.limit(), verdict.unit()),
                    show(verdict.value(), verdict.unit()), verdict.margin() == null ? "\u2013" : Quantity.format(100 * verdict.margin(), "%", 3),
                    verdict.corner() == null ? "\u2013" : verdict.corner(), verdict.sentence(),
                    verdict.citation() == null ? "" : verdict.citation().toString());
        }
    }

    /** Where the branches stand and how they are mounted. */
    public List<String> places() {
        return Places.sentences(evaluation.input());
    }

    static List<VerdictLine> verdicts(Evaluation evaluation) {
        return evaluation.verdicts().stream().filter(verdict -> verdict.outcome() != Outcome.NOT_ASKED).map(VerdictLine::of).toList();
    }

    private static String show(Double value, String unit) {
        return value == null ? "\u2013" : Quantity.format(value, unit);
    }
}
