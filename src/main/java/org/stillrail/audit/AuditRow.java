package org.stillrail.audit;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.TreeMap;
import org.stillrail.document.CanonicalJson;

/** A line as the page shows it. */
public record AuditRow(
        long sequenceNumber,
        OffsetDateTime happenedAt,
        String actor,
        String action,
        String subjectKind,
        String subjectId,
        Map<String, String> detail) {

    public static AuditRow of(AuditEvent event) {
        return new AuditRow(
                event.sequenceNumber(), event.happenedAt().atOffset(ZoneOffset.UTC), event.actor(), event.action(),
                event.subjectKind(), event.subjectId(), detail(event.detail()));
    }

    /** A line that was tampered with may hold anything; it is shown all the same. */
    private static Map<String, String> detail(String json) {
        Map<String, String> shown = new TreeMap<>();
        try {
            Map<?, ?> read = CanonicalJson.read(json, Map.class);
            read.forEach((name, value) -> shown.put(String.valueOf(name), String.valueOf(value)));
        } catch (IllegalArgumentException unreadable) {
            shown.put("unreadable", json);
        }
        return shown;
    }
}
