package org.stillrail.review;

import java.util.List;
import org.stillrail.bank.Bank;

/**
 * A snapshot as its page shows it.
 *
 * @param intact        whether the stored bytes still give the stored SHA-256
 * @param document      null where the bytes cannot be read any more
 * @param unreadable    why not, or null
 * @param signatures    oldest first
 * @param recomputation null unless asked for
 */
record SnapshotView(
        Snapshot snapshot, Bank bank, boolean intact, SnapshotDocument document, String unreadable, List<ReviewRecord.Signed> signatures,
        Recomputation recomputation) {

    public List<FigureLine> figures() {
        return FigureLine.of(document.result());
    }
}
