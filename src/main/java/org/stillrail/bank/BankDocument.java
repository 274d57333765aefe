package org.stillrail.bank;

import java.util.List;
import java.util.UUID;
import org.stillrail.electrical.requirement.RailFigures;

/**
 * What one revision of a bank says.
 *
 * @param railRevisionId the revision of the rail that it is judged against, null for a scratch bank
 * @param scratchRail    the few figures that a scratch bank is read with, null for a bank on a rail
 */
public record BankDocument(UUID railRevisionId, RailFigures scratchRail, List<BranchDocument> branches, String note) {

    public BankDocument {
        branches = List.copyOf(branches);
    }

    /** With another revision of one part wherever it stands. */
    BankDocument withPartRevision(UUID partId, UUID partRevisionId) {
        return new BankDocument(railRevisionId, scratchRail,
                branches.stream().map(branch -> partId.equals(branch.partId()) ? branch.withPartRevision(partRevisionId) : branch).toList(), note);
    }
}
