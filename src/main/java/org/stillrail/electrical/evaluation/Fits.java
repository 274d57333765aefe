package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.step.FittedBranch;

/**
 * Rational fits of the branches of a bank, made where first needed and then shared by its corners.
 *
 * @param proper for figures that are shown
 * @param coarse for finding which corners to show
 */
record Fits(FittedBranch proper, FittedBranch coarse) {

    static Fits none() {
        return new Fits(new FittedBranch(), FittedBranch.coarse());
    }
}
