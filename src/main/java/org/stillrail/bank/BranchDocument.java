package org.stillrail.bank;

import java.util.UUID;
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
 */
public record BranchDocument(
        String label, int count, UUID partId, UUID partRevisionId, SeriesRlc inline, SeriesPath mounting, SeriesPath shared) {

    BranchDocument withPartRevision(UUID revisionId) {
        return new BranchDocument(label, count, partId, revisionId, inline, mounting, shared);
    }
}
