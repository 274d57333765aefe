package org.stillrail.electrical.evaluation;

/**
 * A branch that carries next to nothing where it matters.
 *
 * @param branch        index in the bank
 * @param largestShare  its largest share of the current in the damping band and from the switching frequency to three times it
 * @param worksFromHz   from where on it carries half of the current, or null where it never does on the grid
 */
public record IdleBranch(int branch, double largestShare, Double worksFromHz) {
}
