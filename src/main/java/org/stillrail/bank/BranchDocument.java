package org.stillrail.bank;

import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
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
 * @param alternates     other library parts that may be fitted instead; null where there are none
 * @param unfitted       further places on the board that stay empty; null where there are none
 */
public record BranchDocument(
        String label, int count, UUID partId, UUID partRevisionId, SeriesRlc inline, SeriesPath mounting, SeriesPath shared,
        Node node, MountingOrigin mountingOrigin, List<Alternate> alternates, Integer unfitted) {

    /** @param partRevisionId the newest revision when the bank was saved */
    public record Alternate(UUID partId, UUID partRevisionId) {

        private Alternate withRevision(UUID ofPartId, UUID revisionId) {
            return partId.equals(ofPartId) ? new Alternate(partId, revisionId) : this;
        }
    }

    /** What is absent stays absent, so that a document without it keeps its bytes. */
    public BranchDocument {
        alternates = alternates == null || alternates.isEmpty() ? null : List.copyOf(alternates);
        unfitted = unfitted == null || unfitted == 0 ? null : unfitted;
    }

    /** At the one node, with its mounting typed, without alternates and empty places. */
    public BranchDocument(String label, int count, UUID partId, UUID partRevisionId, SeriesRlc inline, SeriesPath mounting, SeriesPath shared) {
        this(label, count, partId, partRevisionId, inline, mounting, shared, null, null, null, null);
    }

    /** All library parts that may stand here, the named one first. */
    public Stream<Alternate> parts() {
        Stream<Alternate> named = partId == null ? Stream.empty() : Stream.of(new Alternate(partId, partRevisionId));
        return Stream.concat(named, alternates == null ? Stream.empty() : alternates.stream());
    }

    /** With another revision of a part, wherever it stands. */
    BranchDocument withPartRevision(UUID ofPartId, UUID revisionId) {
        return new BranchDocument(label, count, partId, ofPartId.equals(partId) ? revisionId : partRevisionId, inline, mounting, shared, node,
                mountingOrigin,
                alternates == null ? null : alternates.stream().map(alternate -> alternate.withRevision(ofPartId, revisionId)).toList(), unfitted);
    }

    /**
     * What is left to be fitted when a part may not be any more: the other alternates, the first of them in the place of the named
     * part where that is the one. A branch with nothing else takes what replaces the part, and stays as it is where nothing does.
     *
     * @param replacement of the part, or null
     */
    BranchDocument without(UUID otherPartId, Alternate replacement) {
        List<Alternate> others = parts().filter(part -> !part.partId().equals(otherPartId)).toList();
        List<Alternate> left = others.isEmpty() && replacement != null ? List.of(replacement) : others;
        if (partId == null || left.isEmpty()) {
            return this;
        }
        return new BranchDocument(label, count, left.get(0).partId(), left.get(0).partRevisionId(), null, mounting, shared, node, mountingOrigin,
                left.subList(1, left.size()), unfitted);
    }

    /** Whether a part may stand here beside the named one. */
    boolean hasAlternate(UUID otherPartId) {
        return alternates != null && alternates.stream().anyMatch(alternate -> alternate.partId().equals(otherPartId));
    }

    BranchDocument withAlternates(List<Alternate> newAlternates, Integer newUnfitted) {
        return new BranchDocument(label, count, partId, partRevisionId, inline, mounting, shared, node, mountingOrigin, newAlternates, newUnfitted);
    }

    BranchDocument placed(Node newNode, MountingOrigin newOrigin) {
        return new BranchDocument(label, count, partId, partRevisionId, inline, mounting, shared, newNode, newOrigin, alternates, unfitted);
    }

    public BranchDocument withMounting(SeriesPath newMounting, MountingOrigin newOrigin) {
        return new BranchDocument(label, count, partId, partRevisionId, inline, newMounting, shared, node, newOrigin, alternates,
                unfitted);
    }
}
