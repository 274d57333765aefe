package org.stillrail.report;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stillrail.audit.AuditEvent;
import org.stillrail.audit.AuditLines;

/** What can be told of lines that another installation wrote: each gives its hash, and neighbours follow from one another. */
final class OriginLines {

    private static final int FIELDS = 10;

    private OriginLines() {
    }

    /** @param rows of {@link ProjectTable#ORIGIN_AUDIT_EVENT}, as values */
    static List<String> conflicts(List<Map<String, Object>> rows) {
        List<String> conflicts = new ArrayList<>();
        Map<String, List<AuditEvent>> chains = new HashMap<>();
        for (Map<String, Object> row : rows) {
            if (row.values().stream().anyMatch(value -> value == null) || row.size() < FIELDS) {
                conflicts.add("A line of the origin's record lacks one of its fields.");
                continue;
            }
            AuditEvent line = event(row);
            if (!line.intact()) {
                conflicts.add(name((String) row.get("chain"), line) + " does not give its SHA-256: the file was changed.");
            }
            chains.computeIfAbsent((String) row.get("chain"), chain -> new ArrayList<>()).add(line);
        }
        chains.forEach((chain, lines) -> {
            lines.sort(Comparator.comparingLong(AuditEvent::sequenceNumber));
            for (int i = 1; i < lines.size(); i++) {
                AuditEvent line = lines.get(i);
                AuditEvent before = lines.get(i - 1);
                boolean neighbours = line.sequenceNumber() <= before.sequenceNumber() + 1;
                if (neighbours && !line.follows(before)) {
                    conflicts.add(name(chain, line) + " does not follow from the one before it: the file was changed.");
                }
            }
        });
        return conflicts;
    }

    private static String name(String chain, AuditEvent line) {
        return "Line " + line.sequenceNumber() + " of the record of origin " + AuditLines.shortName(chain);
    }

    private static AuditEvent event(Map<String, Object> row) {
        return new AuditEvent((Long) row.get("sequence_number"), ((OffsetDateTime) row.get("happened_at")).toInstant(), (String) row.get("actor"),
                (String) row.get("action"), (String) row.get("subject_kind"), (String) row.get("subject_id"), (String) row.get("detail"),
                (String) row.get("previous_hash"), (String) row.get("hash"));
    }
}
