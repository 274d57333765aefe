package org.stillrail.library;

import java.time.OffsetDateTime;
import java.util.UUID;
import org.stillrail.web.Quantity;

/**
 * A sweep of a fixture with a standard in it, stored once and chosen by name.
 *
 * @param loadOhm true resistance of the load, null for the other two
 */
public record FixtureSweep(
        UUID id, String name, Standard standard, Double loadOhm, String rawSha256, String fileName, String author, OffsetDateTime madeAt,
        SweepDocument document) {

    /** What was in the fixture. */
    public enum Standard { OPEN, SHORT, LOAD }

    public String label() {
        return name + (loadOhm == null ? "" : " (" + Quantity.format(loadOhm, "ohm") + ")");
    }
}
