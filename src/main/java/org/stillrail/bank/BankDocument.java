package org.stillrail.bank;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.stillrail.electrical.bank.Distance;
import org.stillrail.electrical.requirement.RailFigures;

/**
 * What one revision of a bank says.
 *
 * @param railRevisionId the revision of the rail that it is judged against, null for a scratch bank
 * @param scratchRail    the few figures that a scratch bank is read with, null for a bank on a rail
 * @param distance       between converter and load, whose node each branch then names; null for a bank at one node
 */
public record BankDocument(UUID railRevisionId, RailFigures scratchRail, List<BranchDocument> branches, String note, Distance distance) {

    public BankDocument {
        branches = List.copyOf(branches);
    }

    /** At one node. */
    public BankDocument(UUID railRevisionId, RailFigures scratchRail, List<BranchDocument> branches, String note) {
        this(railRevisionId, scratchRail, branches, note, null);
    }

    /** On another rail or revision of it, with other branches and note. */
    public BankDocument withBranches(UUID newRailRevisionId, List<BranchDocument> newBranches, String newNote) {
        return new BankDocument(newRailRevisionId, newRailRevisionId == null ? scratchRail : null, newBranches, newNote, distance);
    }

    /** Every library part that may stand in it, the alternates too. */
    public Set<UUID> partIds() {
        return branches.stream().flatMap(BranchDocument::parts).map(BranchDocument.Alternate::partId).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** As it may be fitted without a part, branch by branch as {@link BranchDocument#without} says. */
    BankDocument without(UUID partId, BranchDocument.Alternate replacement) {
        return withBranches(railRevisionId, branches.stream().map(branch -> branch.without(partId, replacement)).toList(), note);
    }

    /** With another revision of one part wherever it stands. */
    BankDocument withPartRevision(UUID partId, UUID partRevisionId) {
        return withBranches(railRevisionId, branches.stream().map(branch -> branch.withPartRevision(partId, partRevisionId)).toList(), note);
    }
}
