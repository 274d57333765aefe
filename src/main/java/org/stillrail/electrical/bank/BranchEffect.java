package org.stillrail.electrical.bank;

import java.util.ArrayList;
import java.util.List;

/** What one part more, one fewer and none at all in a branch do to a list of figures, in the order of the list. */
public record BranchEffect(String label, List<FigureEffect> figures) {

    public BranchEffect {
        figures = List.copyOf(figures);
    }

    /** One entry for each branch, in the bank's order. */
    public static List<BranchEffect> of(Bank bank, List<BankFigure> figures) {
        double[] now = figures.stream().mapToDouble(figure -> figure.value().applyAsDouble(bank)).toArray();
        List<BranchEffect> effects = new ArrayList<>();
        for (int k = 0; k < bank.branches().size(); k++) {
            Branch branch = bank.branches().get(k);
            Bank more = bank.with(k, branch.withCount(branch.count() + 1));
            Bank fewer = branch.count() > 1 ? bank.with(k, branch.withCount(branch.count() - 1)) : null;
            Bank none = bank.branches().size() > 1 ? bank.without(k) : null;
            List<FigureEffect> changes = new ArrayList<>();
            for (int i = 0; i < now.length; i++) {
                BankFigure figure = figures.get(i);
                changes.add(new FigureEffect(figure.name(), figure.unit(), now[i],
                        figure.value().applyAsDouble(more), valueOrNull(figure, fewer), valueOrNull(figure, none)));
            }
            effects.add(new BranchEffect(branch.label(), changes));
        }
        return List.copyOf(effects);
    }

    private static Double valueOrNull(BankFigure figure, Bank bank) {
        return bank == null ? null : figure.value().applyAsDouble(bank);
    }
}
