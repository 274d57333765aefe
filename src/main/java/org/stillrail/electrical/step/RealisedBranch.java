package org.stillrail.electrical.step;

/**
 * A branch in the time domain.
 *
 * @param errorPercent worst error over the branch's |Z|, null where the realisation is exact
 * @param warning      a sentence that says what was replaced, null where there is nothing to say
 * @param replaced     whether an equivalent stands in for the branch
 */
public record RealisedBranch(AdmittanceStateSpace space, Double errorPercent, String warning, boolean replaced) {
}
