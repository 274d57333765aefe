package org.stillrail.library;

import java.time.OffsetDateTime;
import java.util.UUID;
import org.stillrail.electrical.quality.FindingKind;

/** A librarian's word that one kind of finding of a sweep does not matter. @param finding as it read then */
record FindingAcceptance(UUID sweepId, FindingKind kind, String finding, String reason, String person, OffsetDateTime acceptedAt) {
}
