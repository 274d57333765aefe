package org.stillrail.electrical.evaluation;

import java.math.BigDecimal;
import java.util.List;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.Technology;

/**
 * One branch with its resolved model.
 *
 * @param partNumber    null for inline figures
 * @param technology    null for inline figures
 * @param ratedVoltageV null for inline figures
 * @param part          with all that bends it
 * @param source        where the model comes from, in words
 * @param measured      whether it rests on a sweep
 * @param evidence      how well the model is supported; absent is {@link BranchEvidence#NONE}
 * @param heightM       of one part over the board, null where it is not known
 * @param areaM2        that one part takes, null where it is not known
 * @param cost          of one part, null where it is not known
 * @param node          where it stands; null in a bank at one node
 * @param mountingSource where the mounting comes from, in words; null where it is typed
 * @param alternates    this branch with another part that may be fitted instead, once for each; null where there are none
 * @param unfitted      further places on the board that stay empty; null where there are none
 * @param ratings       beside the rated voltage; absent is {@link RatingInput#NONE}
 */
public record BranchInput(
        String label, int count, String partNumber, Technology technology, Double ratedVoltageV, PartInput part, SeriesPath mounting,
        SeriesPath shared, String source, boolean measured, BranchEvidence evidence, Double heightM, Double areaM2, BigDecimal cost, Node node,
        String mountingSource, List<BranchInput> alternates, Integer unfitted, RatingInput ratings) {

    public BranchInput {
        ratings = ratings == null ? RatingInput.NONE : ratings;
        evidence = evidence == null ? BranchEvidence.NONE : evidence;
        alternates = alternates == null || alternates.isEmpty() ? null : List.copyOf(alternates);
    }

    /** Without evidence, size, cost and ratings. */
    public BranchInput(
            String label, int count, String partNumber, Technology technology, Double ratedVoltageV, PartInput part, SeriesPath mounting,
            SeriesPath shared, String source, boolean measured) {
        this(label, count, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, null, null, null, null, null, null, null,
                null, null);
    }

    /** With its part at some operating point. */
    public Branch branch(ImpedanceModel model) {
        return new Branch(label, count, model, mounting, shared, node);
    }

    /** With its part as modelled, nothing bent. */
    public Branch branch() {
        return branch(part.asModelled());
    }

    public BranchInput withCount(int newCount) {
        return new BranchInput(label, newCount, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, evidence,
                heightM, areaM2, cost, node, mountingSource,
                alternates == null ? null : alternates.stream().map(alternate -> alternate.withCount(newCount)).toList(), unfitted, ratings);
    }

    public BranchInput withEvidence(BranchEvidence newEvidence) {
        return new BranchInput(label, count, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, newEvidence,
                heightM, areaM2, cost, node, mountingSource, alternates, unfitted, ratings);
    }

    /** @param newHeightM and the others: null where not known */
    public BranchInput withSize(Double newHeightM, Double newAreaM2, BigDecimal newCost) {
        return new BranchInput(label, count, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, evidence,
                newHeightM, newAreaM2, newCost, node, mountingSource, alternates, unfitted, ratings);
    }

    /** @param newNode and the other: null where there is one node, or the mounting is typed */
    public BranchInput withPlace(Node newNode, String newMountingSource) {
        return new BranchInput(label, count, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, evidence,
                heightM, areaM2, cost, newNode, newMountingSource, alternates, unfitted, ratings);
    }

    /** @param newAlternates and the other: null where there are none */
    public BranchInput withAlternates(List<BranchInput> newAlternates, Integer newUnfitted) {
        return new BranchInput(label, count, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, evidence,
                heightM, areaM2, cost, node, mountingSource, newAlternates, newUnfitted, ratings);
    }

    public BranchInput withRatings(RatingInput newRatings) {
        return new BranchInput(label, count, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, evidence,
                heightM, areaM2, cost, node, mountingSource, alternates, unfitted, newRatings);
    }

    /** The parts that may stand here: the named one as 0, then the alternates. */
    int choices() {
        return alternates == null ? 1 : 1 + alternates.size();
    }

    /** The branch with one of its parts and no alternates. */
    BranchInput choice(int index) {
        return (index == 0 ? this : alternates.get(index - 1)).withAlternates(null, unfitted);
    }

    /** Places on the board, with parts and empty. */
    int places() {
        return unfitted == null ? count : count + unfitted;
    }
}
