package org.stillrail.electrical.spread;

import java.util.List;
import java.util.Objects;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.ripple.PeriodicCurrent;

/**
 * A bank of random parts under one current.
 *
 * @param lots        whether all parts of a branch come from one lot and stray together, the cautious choice; else each strays by
 *                    itself and the branch by their mean
 * @param current     at the nominal inductance; null where it is not modelled, which leaves out the ripple
 * @param inductance  of the inductor; the ripple current goes with its inverse
 * @param crossoverHz where ESR and |Z| are read
 * @param switchingHz likewise
 * @param distance    between converter and load, which does not stray; null for a bank at one node
 * @param loop        null where it is not modelled; at one node only
 */
public record RandomBank(
        List<RandomBranch> branches, boolean lots, PeriodicCurrent current, Tolerance inductance, double crossoverHz, double switchingHz,
        Distance distance, RandomLoop loop) {

    public RandomBank {
        branches = List.copyOf(branches);
        if (branches.isEmpty()) {
            throw new IllegalArgumentException("A bank needs at least one branch");
        }
        Objects.requireNonNull(inductance, "inductance");
        Require.positive("crossoverHz", crossoverHz);
        Require.positive("switchingHz", switchingHz);
        if (loop != null && distance != null) {
            throw new IllegalArgumentException("The loop of random banks is modelled at one node only");
        }
    }

    /** Without a loop. */
    public RandomBank(
            List<RandomBranch> branches, boolean lots, PeriodicCurrent current, Tolerance inductance, double crossoverHz, double switchingHz,
            Distance distance) {
        this(branches, lots, current, inductance, crossoverHz, switchingHz, distance, null);
    }

    /** At one node and without a loop. */
    public RandomBank(
            List<RandomBranch> branches, boolean lots, PeriodicCurrent current, Tolerance inductance, double crossoverHz, double switchingHz) {
        this(branches, lots, current, inductance, crossoverHz, switchingHz, null, null);
    }

    Bank nominal() {
        return new Bank(branches.stream().map(RandomBranch::branch).toList(), distance);
    }

    /** Whether a figure can be told of it. */
    boolean has(RandomFigure figure) {
        return !figure.further() && (figure == RandomFigure.RIPPLE ? current != null : figure.ofLoop() ? loop != null
                : distance != null || !figure.ofTwoNodes());
    }
}
