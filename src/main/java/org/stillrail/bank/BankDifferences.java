package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.stillrail.electrical.evaluation.BranchInput;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.electrical.evaluation.EvaluationFigures;
import org.stillrail.electrical.evaluation.FigureComparison;

/**
 * What is new between two revisions of a bank.
 *
 * @param branches in sentences
 * @param verdicts that differ
 * @param figures  other key figures that differ
 */
record BankDifferences(List<String> branches, List<VerdictTurn> verdicts, List<FigureComparison.Difference> figures) {

    private static final double SAME = 1e-3;

    static BankDifferences between(Evaluation before, Evaluation after) {
        List<FigureComparison.Difference> figures = FigureComparison.compare(
                EvaluationFigures.of(before), EvaluationFigures.of(after), SAME).stream()
                .filter(difference -> !difference.name().matches(".* (outcome|limit|value|corner)|extremum .*|limits .*"))
                .toList();
        List<String> sentences = new ArrayList<>(branches(before.input().branches(), after.input().branches()));
        if (!Objects.equals(before.input().distance(), after.input().distance())) {
            sentences.add("Between converter and load lay " + Places.distance(before.input().distance()) + ", now lies " + Places.distance(after.input().distance()) + ".");
        }
        return new BankDifferences(sentences, VerdictTurn.between(before, after), figures);
    }

    /** Branches are recognised by their name; what has another name is gone and new. */
    static List<String> branches(List<BranchInput> before, List<BranchInput> after) {
        List<String> sentences = new ArrayList<>();
        List<BranchInput> left = new ArrayList<>(before);
        for (BranchInput branch : after) {
            BranchInput old = left.stream().filter(each -> each.label().equals(branch.label())).findFirst().orElse(null);
            if (old == null) {
                sentences.add("Branch '" + branch.label() + "' is new: " + words(branch) + ".");
                continue;
            }
            left.remove(old);
            if (!words(old).equals(words(branch))) {
                sentences.add("Branch '" + branch.label() + "' was " + words(old) + " and is " + words(branch) + ".");
            } else if (!old.source().equals(branch.source())) {
                sentences.add("Branch '" + branch.label() + "' rests on " + branch.source() + ", before on " + old.source() + ".");
            }
            if (!old.mounting().equals(branch.mounting()) || !old.shared().equals(branch.shared())) {
                sentences.add("The mounting or shared path of branch '" + branch.label() + "' is another one.");
            } else if (!Objects.equals(old.mountingSource(), branch.mountingSource())) {
                sentences.add("The mounting of branch '" + branch.label() + "' is now " + (branch.mountingSource() == null ? "typed" : branch.mountingSource()) + ".");
            }
            if (!fittable(old).equals(fittable(branch))) {
                sentences.add("Branch '" + branch.label() + "' had " + fittable(old) + " and has " + fittable(branch) + ".");
            }
            if (old.node() != branch.node() && branch.node() != null && old.node() != null) {
                sentences.add("Branch '" + branch.label() + "' stood " + old.node().label() + " and stands " + branch.node().label() + ".");
            }
        }
        left.forEach(gone -> sentences.add("Branch '" + gone.label() + "' is gone: it was " + words(gone) + "."));
        return List.copyOf(sentences);
    }

    private static String words(BranchInput branch) {
        return branch.count() + " \u00d7 " + (branch.partNumber() == null ? "figures typed by hand" : branch.partNumber());
    }

    private static String fittable(BranchInput branch) {
        String alternates = branch.alternates() == null || branch.alternates().isEmpty() ? "no alternates"
                : "the alternates " + branch.alternates().stream().map(BranchInput::partNumber).collect(Collectors.joining(", "));
        return alternates + (branch.unfitted() == null ? "" : " and " + branch.unfitted() + " empty places");
    }

    public boolean none() {
        return branches.isEmpty() && verdicts.isEmpty() && figures.isEmpty();
    }
}
