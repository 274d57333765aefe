package org.stillrail.library;

import java.time.OffsetDateTime;
import java.util.UUID;

/** One imported sweep of a part. */
public record Sweep(
        UUID id, UUID partId, String rawSha256, String fileName, String importer, OffsetDateTime importedAt, String sha256,
        SweepDocument document) {

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

    /** A short name for legends: the sample, or the file where no sample was named. */
    public String label() {
        String sample = provenance().sample();
        return sample == null ? fileName : sample;
    }
}
