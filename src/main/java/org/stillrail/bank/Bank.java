package org.stillrail.bank;

import java.util.UUID;
import org.stillrail.document.Revision;

/**
 * A stored bank with one of its revisions.
 *
 * @param railId  null for a scratch bank, which belongs to its owner alone
 * @param version counts changes; a save states the version it started from
 */
public record Bank(
        UUID id, UUID railId, UUID ownerId, String owner, String name, int latestNumber, long version, Revision<BankDocument> revision,
        BankState state) {

    public BankDocument document() {
        return revision.document();
    }

    public boolean isScratch() {
        return railId == null;
    }

    public boolean isLatest() {
        return revision.number() == latestNumber;
    }
}
