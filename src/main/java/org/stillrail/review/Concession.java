package org.stillrail.review;

import java.time.LocalDate;
import java.util.UUID;
import org.stillrail.electrical.requirement.Requirement;

/**
 * A reasoned acceptance of one verdict that is not met or unknown.
 *
 * @param owner  the owner's name as it was at submission
 * @param endsOn the last day
 */
record Concession(Requirement requirement, String reason, UUID ownerId, String owner, LocalDate endsOn) {
}
