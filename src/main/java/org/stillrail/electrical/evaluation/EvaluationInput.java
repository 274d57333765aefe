package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.requirement.TeamSettings;

/**
 * All that the figures of a bank depend on, as one frozen value.
 *
 * @param methodVersion raised whenever the same input may give other figures
 * @param settings      the team's, absent is {@link TeamSettings#DEFAULT}
 * @param distance      between converter and load, whose node each branch then names; null for a bank at one node
 */
public record EvaluationInput(int methodVersion, RailFigures rail, List<BranchInput> branches, TeamSettings settings, Distance distance) {

    /**
     * 6: where no curve over temperature is known, sweeps at several temperatures tell what a place in the tolerance band has there; sweeps of different
     * ages are compared without what ageing made of them. Rings that are sharper elsewhere are also told of where the bank stays inductive.
     * A load line is modelled at two nodes.
     * 5: start-up and stored charge count the fixed capacitance of the load, and what sweeps at several biases tell; where no curve over bias
     * is known, those sweeps also tell what a place in the tolerance band loses by bias.
     * 4: a load step ends its steps otherwise, which moves its last digits.
     * 3: the loop's margins have verdicts; boost and inverting converters meet their most ripple current from the lowest input, no longer from the
     * highest; a flyback is modelled where its turns are stated; the steps of a load step are chosen otherwise.
     * 2: parts warm by their own losses; the voltage verdict counts the accuracy of the reference; reverse voltage, ripple current, temperature,
     * life and start-up have verdicts; the load step goes through the fits of the parts. An input that was frozen before holds no ratings, so
     * recomputed it differs by the new verdicts, most of them unknown, and by what warmth changes; its record and its outcome stay as they were
     * signed.
     */
    public static final int METHOD_VERSION = 6;

    public EvaluationInput {
        branches = List.copyOf(branches);
        settings = settings == null ? TeamSettings.DEFAULT : settings;
    }

    /** With the default settings. */
    public EvaluationInput(int methodVersion, RailFigures rail, List<BranchInput> branches) {
        this(methodVersion, rail, branches, TeamSettings.DEFAULT, null);
    }

    public Bank bank() {
        return new Bank(branches.stream().map(BranchInput::branch).toList(), distance);
    }

    public EvaluationInput withBranches(List<BranchInput> changed) {
        return new EvaluationInput(methodVersion, rail, changed, settings, distance);
    }

    public EvaluationInput withRail(RailFigures changed) {
        return new EvaluationInput(methodVersion, changed, branches, settings, distance);
    }

    public EvaluationInput withSettings(TeamSettings changed) {
        return new EvaluationInput(methodVersion, rail, branches, changed, distance);
    }

    /** @param changed null for one node */
    public EvaluationInput withDistance(Distance changed) {
        return new EvaluationInput(methodVersion, rail, branches, settings, changed);
    }

    /** With one branch at another count; without it at 0. */
    EvaluationInput withCount(int branch, int count) {
        List<BranchInput> changed = new ArrayList<>(branches);
        if (count == 0) {
            changed.remove(branch);
        } else {
            changed.set(branch, branches.get(branch).withCount(count));
        }
        return withBranches(changed);
    }
}
