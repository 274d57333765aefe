package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.Technology;

/**
 * One branch with its resolved model.
 *
 * @param partNumber    null for inline figures
 * @param technology    null for inline figures
 * @param ratedVoltageV null for inline figures
 * @param source        where the model comes from, in words
 * @param measured      whether it rests on a sweep
 */
public record BranchInput(
        String label, int count, String partNumber, Technology technology, Double ratedVoltageV, ModelInput model, SeriesPath mounting,
        SeriesPath shared, String source, boolean measured) {

    public Branch branch() {
        return new Branch(label, count, model.model(), mounting, shared);
    }
}
