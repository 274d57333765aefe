package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
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
     * @param bank    with the named parts
     * @param corners of all fittings
     */
    static List<Evidence> of(EvaluationInput input, Bank bank, List<Corner> corners, KeyFrequencies frequencies, List<Verdict> verdicts) {
        List<Evidence> found = new ArrayList<>();
        verdicts.stream().filter(verdict -> verdict.outcome() == Outcome.UNKNOWN).findFirst()
                .ifPresent(verdict -> found.add(new Evidence(Kind.UNKNOWN, verdict.branch(), verdict.requirement().label() + ": " + verdict.sentence())));
        for (int k = 0; k < input.branches().size(); k++) {
            BranchInput branch = input.branches().get(k);
            String name = "'" + branch.label() + "'";
            found.add(of(k, name, branch, flat(k, branch, corners), bank.branches().get(k).part().validRange(), frequencies));
            for (int choice = 1; choice < branch.choices(); choice++) {
                BranchInput alternate = branch.choice(choice);
                found.add(of(k, name + " with " + alternate.partNumber(), alternate, flat(k, alternate, corners), alternate.part().asModelled().validRange(), frequencies));
            }
        }
        found.sort(Comparator.comparing(Evidence::kind));
        return List.copyOf(found);
    }

    /** What the corners could not bend, in sentences: each branch and each of its alternates. */
    static List<String> takenAsFlat(EvaluationInput input, List<Corner> corners) {
        List<String> sentences = new ArrayList<>();
        for (int k = 0; k < input.branches().size(); k++) {
            BranchInput branch = input.branches().get(k);
            for (int choice = 0; choice < branch.choices(); choice++) {
                String name = "'" + branch.label() + "'" + (choice == 0 ? "" : " with " + branch.choice(choice).partNumber());
                sentences.addAll(flat(k, branch.choice(choice), corners).sentences(name));
            }
        }
        return sentences;
    }

    private static TakenAsFlat flat(int index, BranchInput branch, List<Corner> corners) {
        return new TakenAsFlat(index, branch, corners.stream()
                .filter(corner -> Objects.equals(corner.branches().get(index).partNumber(), branch.partNumber())).toList());
    }

    private static Evidence of(int index, String name, BranchInput branch, TakenAsFlat flat, ValidRange range, KeyFrequencies frequencies) {
        BranchEvidence evidence = branch.evidence();
        double from = frequencies.dampingFromHz();
        double to = frequencies.quietToHz();
        if (!range.contains(from) || !range.contains(to)) {
            return new Evidence(Kind.EXTRAPOLATED, index, name + " is known from " + Words.quantity(range.fromHz(), "Hz") + " to "
                    + Words.quantity(range.toHz(), "Hz") + "; the verdicts look from " + Words.quantity(from, "Hz") + " to "
                    + Words.quantity(to, "Hz") + ".");
        }
        if (flat.weakness(name) != null) {
            return new Evidence(Kind.TAKEN_AS_FLAT, index, flat.weakness(name));
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
