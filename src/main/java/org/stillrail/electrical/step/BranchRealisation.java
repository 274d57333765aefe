package org.stillrail.electrical.step;

import org.stillrail.electrical.bank.Branch;

/** How a branch is brought into the time domain. */
@FunctionalInterface
public interface BranchRealisation {

    /** Whether the frequency matters; finding it out takes time. */
    default boolean asksFrequency() {
        return true;
    }

    /** Shared by the steps that are made with this realisation where it is that of one bank. */
    default Propagators propagators() {
        return new Propagators();
    }

    /**
     * @param aroundHz where the response is decided: the crossover, or without a loop the reciprocal of the duration
     * @throws IllegalArgumentException where the branch has no usable realisation, in words
     */
    RealisedBranch realise(Branch branch, double aroundHz);
}
