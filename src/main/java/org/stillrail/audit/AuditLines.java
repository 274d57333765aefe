package org.stillrail.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Lines of this installation's record beside those of others that came along with projects. A chain is named by the hash of its
 * first line. What came from elsewhere is a choice of lines: each can be held against its hash, but a missing one is not seen.
 */
@Repository
public class AuditLines {

    /**
     * SQL: true for a row of {@code audit_line} about one of {@code :subjects}, which are ids; a refused request is about the id in
     * its path (/banks/, /rails/, /projects/, /library/parts/, /library/sweeps/).
     */
    public static final String ABOUT = """
            (case when subject_kind <> 'request' then subject_id
                when subject_id like '/banks/%' or subject_id like '/rails/%' then substring(subject_id from 8 for 36)
                when subject_id like '/projects/%' then substring(subject_id from 11 for 36)
                when subject_id like '/library/parts/%' then substring(subject_id from 16 for 36)
                when subject_id like '/library/sweeps/%' then substring(subject_id from 17 for 36)
                end) in (:subjects)""";

    private static final int NAME_LENGTH = 12;

    private final JdbcClient jdbc;

    AuditLines(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Short for a chain, to be read by people. */
    public static String shortName(String chain) {
        return chain.substring(0, Math.min(NAME_LENGTH, chain.length()));
    }

    /** Name of this installation's own chain; the hash before the first line where there is none yet. */
    public String ownChain() {
        return jdbc.sql("select hash from audit_event where sequence_number = 1").query(String.class).optional().orElse(AuditEvent.ORIGIN);
    }

    /** Lines about these subjects by chain, this installation's first, each newest first. */
    public Map<String, List<AuditEvent>> about(Collection<String> subjects) {
        Map<String, List<AuditEvent>> lines = new LinkedHashMap<>();
        lines.put(ownChain(), new ArrayList<>());
        jdbc.sql("select * from audit_line where " + ABOUT + " order by chain, sequence_number desc")
                .param("subjects", subjects)
                .query(row -> {
                    lines.computeIfAbsent(row.getString("chain"), chain -> new ArrayList<>()).add(AuditEvents.eventRow(row, 0));
                });
        return lines;
    }

    /** Of the lines that came along from elsewhere, those that do not give the hash they carry, in words. */
    public List<String> originFaults() {
        List<String> faults = new ArrayList<>();
        jdbc.sql("select * from origin_audit_event order by chain, sequence_number").query(row -> {
            AuditEvent line = AuditEvents.eventRow(row, 0);
            if (!line.intact()) {
                faults.add("Line " + line.sequenceNumber() + " of the record of origin " + shortName(row.getString("chain")) + " is not as it was written.");
            }
        });
        return faults;
    }

    public int originLines() {
        return jdbc.sql("select count(*) from origin_audit_event").query(Integer.class).single();
    }
}
