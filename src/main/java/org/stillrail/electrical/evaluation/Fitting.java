package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * One way to fit a bank whose branches name alternates: which of its parts each branch has.
 *
 * @param name  of the alternates that are in, as in {@code ALT-1 in 'bulk'}; null for the named parts
 * @param input the bank fitted so, without alternates
 */
record Fitting(String name, EvaluationInput input) {

    static final int MOST_ALTERNATES = 12;
    static final int MOST_COMBINATIONS = 16;

    /**
     * Every combination, the named parts first, where there are at most {@value #MOST_COMBINATIONS}. Where there are more: the
     * named parts, each alternate alone, and the alternates of the same place in their lists together. For n alternates that is at most
     * 1 + 2 n fittings instead of a product.
     *
     * @throws IllegalArgumentException where the bank names more than {@value #MOST_ALTERNATES} alternates
     */
    static List<Fitting> of(EvaluationInput input) {
        List<BranchInput> branches = input.branches();
        int alternates = branches.stream().mapToInt(branch -> branch.choices() - 1).sum();
        if (alternates > MOST_ALTERNATES) {
            throw new IllegalArgumentException("A bank names at most " + MOST_ALTERNATES + " alternates, not " + alternates);
        }
        if (alternates == 0) {
            return List.of(named(input));
        }
        List<List<Integer>> chosen = combinations(branches) <= MOST_COMBINATIONS ? all(branches) : some(branches);
        return chosen.stream().map(choice -> of(input, choice)).toList();
    }

    /** With the named parts. */
    static Fitting named(EvaluationInput input) {
        return of(input, Collections.nCopies(input.branches().size(), 0));
    }

    /** How many ways there are to fit the branches. */
    static long combinations(List<BranchInput> branches) {
        return branches.stream().mapToLong(BranchInput::choices).reduce(1, (a, b) -> a * b);
    }

    /** What was looked at where that is not every combination, in a sentence; else null. */
    static String note(EvaluationInput input, List<Fitting> lookedAt) {
        long all = combinations(input.branches());
        return lookedAt.size() >= all ? null : "Of " + all + " combinations of named parts and alternates, " + lookedAt.size()
                + " were looked at: the named parts, each alternate alone, and the alternates of the same place in their lists together.";
    }

    private static Fitting of(EvaluationInput input, List<Integer> choice) {
        List<BranchInput> fitted = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int k = 0; k < choice.size(); k++) {
            BranchInput branch = input.branches().get(k).choice(choice.get(k));
            fitted.add(branch);
            if (choice.get(k) > 0) {
                names.add(branch.partNumber() + " in '" + branch.label() + "'");
            }
        }
        return new Fitting(names.isEmpty() ? null : String.join(" and ", names), input.withBranches(fitted));
    }

    private static List<List<Integer>> all(List<BranchInput> branches) {
        List<List<Integer>> combinations = List.of(List.of());
        for (BranchInput branch : branches) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> start : combinations) {
                for (int choice = 0; choice < branch.choices(); choice++) {
                    List<Integer> next = new ArrayList<>(start);
                    next.add(choice);
                    longer.add(next);
                }
            }
            combinations = longer;
        }
        return combinations;
    }

    private static List<List<Integer>> some(List<BranchInput> branches) {
        List<List<Integer>> combinations = new ArrayList<>();
        List<Integer> named = Collections.nCopies(branches.size(), 0);
        combinations.add(named);
        int most = 0;
        for (int k = 0; k < branches.size(); k++) {
            most = Math.max(most, branches.get(k).choices() - 1);
            for (int choice = 1; choice < branches.get(k).choices(); choice++) {
                List<Integer> alone = new ArrayList<>(named);
                alone.set(k, choice);
                combinations.add(alone);
            }
        }
        for (int place = 1; place <= most; place++) {
            int wanted = place;
            List<Integer> together = branches.stream().map(branch -> wanted < branch.choices() ? wanted : 0).toList();
            if (!combinations.contains(together)) {
                combinations.add(together);
            }
        }
        return combinations;
    }
}
