package org.stillrail.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Lines of this installation's record beside those of others that came along with projects. A chain is named by the hash of its
 * first line. What came from elsewhere is a choice of lines: each can be held against its hash, but a missing one is not seen.
 */
@Repository
public class AuditLines {

    /** SQL: true for a row of {@code audit_line} about one of {@code :subjects}, which are ids. */
    public static final String ABOUT =
            "(chain, sequence_number) in (select s.chain, s.sequence_number from audit_subject s where s.about in (:subjects))";

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

    /**
     * What one record says of some subjects.
     *
     * @param chain its name
     * @param lines how many
     * @param own   whether it is this installation's
     */
    public record Source(String chain, int lines, boolean own) {

        /** For people. */
        public String label() {
            return own ? "this installation" : "origin " + shortName(chain);
        }
    }

    /** Records that speak of any of these subjects, this installation's first, which is there even with no line. */
    public List<Source> sources(Collection<String> subjects) {
        List<Source> sources = new ArrayList<>();
        sources.add(new Source(ownChain(), jdbc.sql("select count(*) from audit_event where about in (:subjects)")
                .param("subjects", subjects).query(Integer.class).single(), true));
        sources.addAll(jdbc.sql("select chain, count(*) as lines from origin_audit_event where about in (:subjects) group by chain order by chain")
                .param("subjects", subjects)
                .query((row, index) -> new Source(row.getString("chain"), row.getInt("lines"), false))
                .list());
        return sources;
    }

    /** One page of what a record says of these subjects, newest first. */
    public List<AuditEvent> about(Collection<String> subjects, Source source, int offset, int most) {
        String from = source.own() ? "audit_event where true" : "origin_audit_event where chain = :chain";
        // The numbers of the page come from the index alone; only its own lines are read as a whole.
        List<Long> numbers = jdbc.sql("select sequence_number from " + from
                        + " and about in (:subjects) order by sequence_number desc offset :offset rows fetch next :most rows only")
                .param("chain", source.chain())
                .param("subjects", subjects)
                .param("offset", offset)
                .param("most", most)
                .query(Long.class)
                .list();
        return numbers.isEmpty() ? List.of() : jdbc.sql("select * from " + from + " and sequence_number in (:numbers) order by sequence_number desc")
                .param("chain", source.chain())
                .param("numbers", numbers)
                .query(AuditEvents::eventRow)
                .list();
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
