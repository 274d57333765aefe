package org.stillrail.electrical.evaluation;

import java.math.BigDecimal;
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
 */
public record BranchInput(
        String label, int count, String partNumber, Technology technology, Double ratedVoltageV, PartInput part, SeriesPath mounting,
        SeriesPath shared, String source, boolean measured, BranchEvidence evidence, Double heightM, Double areaM2, BigDecimal cost, Node node,
        String mountingSource) {

    public BranchInput {
        evidence = evidence == null ? BranchEvidence.NONE : evidence;
    }

    /** Without evidence, size and cost. */
    public BranchInput(
            String label, int count, String partNumber, Technology technology, Double ratedVoltageV, PartInput part, SeriesPath mounting,
            SeriesPath shared, String source, boolean measured) {
        this(label, count, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, null, null, null, null, null, null);
    }

    /** With its part at some operating point. */
    Branch branch(ImpedanceModel model) {
        return new Branch(label, count, model, mounting, shared);
    }

    /** With its part as modelled, nothing bent. */
    public Branch branch() {
        return branch(part.asModelled());
    }

    public BranchInput withCount(int newCount) {
        return new BranchInput(label, newCount, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, evidence,
                heightM, areaM2, cost, node, mountingSource);
    }

    public BranchInput withEvidence(BranchEvidence newEvidence) {
        return new BranchInput(label, count, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, newEvidence,
                heightM, areaM2, cost, node, mountingSource);
    }

    /** @param newHeightM and the others: null where not known */
    public BranchInput withSize(Double newHeightM, Double newAreaM2, BigDecimal newCost) {
        return new BranchInput(label, count, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, evidence,
                newHeightM, newAreaM2, newCost, node, mountingSource);
    }

    /** @param newNode and the other: null where there is one node, or the mounting is typed */
    public BranchInput withPlace(Node newNode, String newMountingSource) {
        return new BranchInput(label, count, partNumber, technology, ratedVoltageV, part, mounting, shared, source, measured, evidence,
                heightM, areaM2, cost, newNode, newMountingSource);
    }
}
