package org.stillrail.library;

import java.time.OffsetDateTime;
import java.util.UUID;
import org.stillrail.web.Quantity;

/** One imported sweep of a part. */
public record Sweep(
        UUID id, UUID partId, String rawSha256, String fileName, String importer, OffsetDateTime importedAt, String sha256,
        SweepDocument document) {

    static final double ROOM_C = 23;
    static final double ROOM_SPAN_C = 5;

    public SweepProvenance provenance() {
        return document.provenance();
    }

    public int points() {
        return document.frequencyHz().length;
    }

    public double startHz() {
        return document.frequencyHz()[0];
    }

    public double stopHz() {
        return document.frequencyHz()[points() - 1];
    }

    /** A short name for legends: the sample, or the file where no sample was named, with bias and temperature where they are unusual. */
    public String label() {
        StringBuilder label = new StringBuilder(provenance().sample() == null ? fileName : provenance().sample());
        if (provenance().biasV() != 0) {
            label.append(", ").append(Quantity.format(provenance().biasV(), "V"));
        }
        if (Math.abs(provenance().temperatureC() - ROOM_C) > ROOM_SPAN_C) {
            label.append(", ").append(Quantity.format(provenance().temperatureC(), "degC"));
        }
        return label.toString();
    }
}
