package org.stillrail.electrical.evaluation;

/**
 * A branch that carries next to nothing where it matters.
 *
 * @param branch        index in the bank
 * @param largestShare  its largest share of the current anywhere in the damping band and the quiet band
 * @param worksFromHz   from where on it carries half of the current, or null where it never does on the grid
 */
public record IdleBranch(int branch, double largestShare, Double worksFromHz) {
}
