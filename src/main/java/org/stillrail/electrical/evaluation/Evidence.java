package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.requirement.Outcome;
import org.stillrail.electrical.requirement.Verdict;

/**
 * What a claim about a bank rests on.
 *
 * @param branch index of the branch, null where a verdict has no figure at all
 */
public record Evidence(Kind kind, Integer branch, String sentence) {

    /** Weakest first. */
    public enum Kind {
        UNKNOWN, EXTRAPOLATED, TAKEN_AS_FLAT, ESTIMATE, TYPED_FIGURES, DATASHEET_MAXIMUM, DATASHEET, ONE_SAMPLE, MEASURED
    }

    /**
     * One entry for each branch and each of its alternates, and one for a verdict that is unknown; weakest first, then in the bank's order.
     *
     * @param parts what stands in each branch
     * @param bank  with the named parts
     */
    static List<Evidence> of(List<TakenAsFlat> parts, Bank bank, KeyFrequencies frequencies, List<Verdict> verdicts) {
        List<Evidence> found = new ArrayList<>();
        verdicts.stream().filter(verdict -> verdict.outcome() == Outcome.UNKNOWN).findFirst()
                .ifPresent(verdict -> found.add(new Evidence(Kind.UNKNOWN, verdict.branch(), verdict.requirement().label() + ": " + verdict.sentence())));
        for (TakenAsFlat part : parts) {
            ValidRange range = part.named() ? bank.branches().get(part.index()).part().validRange() : part.branch().part().asModelled().validRange();
            found.add(of(part, range, frequencies));
        }
        found.sort(Comparator.comparing(Evidence::kind));
        return List.copyOf(found);
    }

    private static Evidence of(TakenAsFlat part, ValidRange range, KeyFrequencies frequencies) {
        int index = part.index();
        String name = part.name();
        BranchInput branch = part.branch();
        BranchEvidence evidence = branch.evidence();
        double from = frequencies.dampingFromHz();
        double to = frequencies.quietToHz();
        if (!range.contains(from) || !range.contains(to)) {
            return new Evidence(Kind.EXTRAPOLATED, index, name + " is known from " + Words.quantity(range.fromHz(), "Hz") + " to "
                    + Words.quantity(range.toHz(), "Hz") + "; the verdicts look from " + Words.quantity(from, "Hz") + " to "
                    + Words.quantity(to, "Hz") + ".");
        }
        String weakness = part.weakness();
        if (weakness != null) {
            return new Evidence(Kind.TAKEN_AS_FLAT, index, weakness);
        }
        if (!evidence.estimates().isEmpty()) {
            return new Evidence(Kind.ESTIMATE, index, name + ": " + evidence.estimates().get(0));
        }
        if (branch.measured()) {
            boolean several = evidence.samples() != null && evidence.samples() > 1;
            return several ? new Evidence(Kind.MEASURED, index, name + " is measured on " + evidence.samples() + " samples.")
                    : new Evidence(Kind.ONE_SAMPLE, index, name + " is measured on one sample.");
        }
        if (branch.partNumber() == null) {
            return new Evidence(Kind.TYPED_FIGURES, index, name + " is figures typed in, without a part.");
        }
        if (evidence.esr() == BranchEvidence.EsrMeaning.MAXIMUM) {
            return new Evidence(Kind.DATASHEET_MAXIMUM, index, "The ESR of " + name + " is its datasheet's maximum: safe for ripple, optimistic for damping.");
        }
        return new Evidence(Kind.DATASHEET, index, name + " rests on datasheet figures, no sweep.");
    }
}
