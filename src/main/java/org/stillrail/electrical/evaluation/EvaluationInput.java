package org.stillrail.electrical.evaluation;

import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.requirement.RailFigures;

/**
 * All that the figures of a bank depend on, as one frozen value.
 *
 * @param methodVersion raised whenever the same input may give other figures
 */
public record EvaluationInput(int methodVersion, RailFigures rail, List<BranchInput> branches) {

    public static final int METHOD_VERSION = 1;

    public EvaluationInput {
        branches = List.copyOf(branches);
    }

    public Bank bank() {
        return new Bank(branches.stream().map(BranchInput::branch).toList());
    }
}
