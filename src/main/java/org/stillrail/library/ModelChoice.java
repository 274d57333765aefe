package org.stillrail.library;

import java.util.List;
import java.util.UUID;

/**
 * Which model a part lends to banks, and why.
 *
 * @param sweepId  the sweep for {@link Kind#SWEEP} and {@link Kind#FIT}, else null
 * @param sweepIds the sweeps for {@link Kind#AVERAGE}, else null: a sweep imported later changes nothing that was chosen
 * @param reason   the librarian's words
 */
public record ModelChoice(Kind kind, UUID sweepId, List<UUID> sweepIds, String reason) {

    public static final ModelChoice DATASHEET = new ModelChoice(Kind.DATASHEET, null, null);

    /** Where the model comes from. */
    public enum Kind { DATASHEET, SWEEP, FIT, AVERAGE }

    public ModelChoice {
        sweepIds = sweepIds == null ? null : List.copyOf(sweepIds);
    }

    public ModelChoice(Kind kind, UUID sweepId, String reason) {
        this(kind, sweepId, null, reason);
    }

    static ModelChoice average(List<UUID> sweepIds, String reason) {
        return new ModelChoice(Kind.AVERAGE, null, sweepIds, reason);
    }

    /** Every sweep that the choice names; none for the datasheet. */
    public List<UUID> sweeps() {
        return switch (kind) {
            case DATASHEET -> List.of();
            case SWEEP, FIT -> List.of(sweepId);
            case AVERAGE -> sweepIds;
        };
    }

    String words() {
        return switch (kind) {
            case DATASHEET -> "datasheet figures";
            case SWEEP -> "sweep " + sweepId;
            case FIT -> "fit of sweep " + sweepId;
            case AVERAGE -> "average of " + sweepIds.size() + " sweeps";
        };
    }
}
