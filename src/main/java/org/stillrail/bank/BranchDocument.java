package org.stillrail.bank;

import java.util.UUID;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;

/**
 * One branch as it was saved: a revision of a library part or inline figures, never both.
 *
 * @param partId         null for inline figures
 * @param partRevisionId the revision of the part that was the newest when the bank was saved
 * @param inline         null for a library part
 * @param mounting       per part
 * @param shared         once for the branch
 * @param node           where it stands; null in a bank at one node
 * @param mountingOrigin where the mounting comes from; null where it is typed
 */
public record BranchDocument(
        String label, int count, UUID partId, UUID partRevisionId, SeriesRlc inline, SeriesPath mounting, SeriesPath shared,
        Node node, MountingOrigin mountingOrigin) {

    /** At the one node, with its mounting typed. */
    public BranchDocument(String label, int count, UUID partId, UUID partRevisionId, SeriesRlc inline, SeriesPath mounting, SeriesPath shared) {
        this(label, count, partId, partRevisionId, inline, mounting, shared, null, null);
    }

    BranchDocument withPartRevision(UUID revisionId) {
        return new BranchDocument(label, count, partId, revisionId, inline, mounting, shared, node, mountingOrigin);
    }

    public BranchDocument withMounting(SeriesPath newMounting, MountingOrigin newOrigin) {
        return new BranchDocument(label, count, partId, partRevisionId, inline, newMounting, shared, node, newOrigin);
    }
}
