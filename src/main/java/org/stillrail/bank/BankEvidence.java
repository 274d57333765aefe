package org.stillrail.bank;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Which bank revisions rest on what a part said before: the part has a newer revision than the one in the bank's document, or
 * was restricted or withdrawn after the bank was saved. Worked out at every asking; nothing is marked in what was stored.
 */
@Repository
public class BankEvidence {

    /**
     * SQL: true for a line of {@code bank_part u} of bank revision {@code r} whose part {@code p} with newest revision {@code n}
     * says something else by now.
     */
    public static final String CHANGED = """
            (u.part_revision_id <> n.id or (p.vetting in ('RESTRICTED', 'WITHDRAWN') and p.vetting_changed_at > r.made_at))""";

    /** SQL: the joins that {@link #CHANGED} speaks of, after {@code bank_revision r}. */
    public static final String PARTS = """
             join bank_part u on u.revision_id = r.id
            join part p on p.id = u.part_id
            join part_revision n on n.subject_id = p.id and n.number = p.latest_number
            """;

    private final JdbcClient jdbc;

    BankEvidence(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * A bank revision that uses a part: the newest of its bank, or one that is approved or in review.
     *
     * @param railV nominal voltage of its rail, null for a scratch bank
     */
    record Use(UUID bankId, String bank, UUID revisionId, int number, int latestNumber, BankState state, Double railV, boolean changed) {

        public String path() {
            return "/banks/" + bankId + (number == latestNumber ? "" : "/revisions/" + number);
        }
    }

    /**
     * A part whose newest revision or vetting is not what a bank rests on.
     *
     * @param used       number of the revision in the bank's document
     * @param newest     likewise of the newest
     * @param vetting    of today
     * @param reason     of the vetting, or null
     * @param replacedBy number of the part that takes the place of a withdrawn one, or null
     */
    public record ChangedPart(UUID partId, String partNumber, int used, int newest, String vetting, String reason, String replacedBy) {

        public String sentence() {
            String revised = used == newest ? "" : " has revision " + newest + ", this bank rests on revision " + used;
            boolean limited = vetting.equals("RESTRICTED") || vetting.equals("WITHDRAWN");
            String state = limited ? " is " + vetting.toLowerCase(Locale.ROOT) + (reason == null ? "" : " (" + reason + ")")
                    + (replacedBy == null ? "" : "; replaced by " + replacedBy) : "";
            return partNumber + revised + (revised.isEmpty() || state.isEmpty() ? "" : " and") + state + ".";
        }
    }

    /** Changed ones first. */
    List<Use> usesOf(UUID partId) {
        // The revisions of the part are looked up first: H2 would else go through all of them, since an outer join keeps its order.
        return jdbc.sql("select distinct b.id as bank_id, b.name, r.id, r.number, b.latest_number, s.state, v.nominal_voltage_v, case when " + CHANGED
                        + " then 1 else 0 end as changed from bank_part o join bank_revision r on r.id = o.revision_id"
                        + " join bank b on b.id = r.subject_id join bank_revision_state s on s.revision_id = r.id" + PARTS
                        + "left join rail_revision v on v.id = r.rail_revision_id"
                        + " where o.part_id = :partId and u.part_id = o.part_id and (r.number = b.latest_number or s.state in ('APPROVED', 'IN_REVIEW'))"
                        + " order by changed desc, b.name, r.number, r.id")
                .param("partId", partId)
                .query(BankEvidence::use)
                .list();
    }

    /** Those of some revisions under which something has changed. */
    Set<UUID> changedOf(Collection<UUID> revisionIds) {
        return revisionIds.isEmpty() ? Set.of()
                : jdbc.sql("select distinct r.id from bank_revision r" + PARTS + "where r.id in (:ids) and " + CHANGED)
                        .param("ids", revisionIds)
                        .query(UUID.class)
                        .set();
    }

    /** What has changed under one revision; empty where it rests on the newest of everything. */
    public List<ChangedPart> changesOf(UUID revisionId) {
        return jdbc.sql("select p.id, p.part_number, o.number as used, p.latest_number, p.vetting, p.vetting_reason, x.part_number as replaced_by"
                        + " from bank_revision r" + PARTS + " join part_revision o on o.id = u.part_revision_id"
                        + " left join part x on x.id = p.replacement_id where r.id = :id and " + CHANGED + " order by p.part_number, o.number")
                .param("id", revisionId)
                .query((row, index) -> new ChangedPart(row.getObject("id", UUID.class), row.getString("part_number"), row.getInt("used"),
                        row.getInt("latest_number"), row.getString("vetting"), row.getString("vetting_reason"),
                        row.getString("replaced_by")))
                .list();
    }

    private static Use use(ResultSet row, int index) throws SQLException {
        return new Use(row.getObject("bank_id", UUID.class), row.getString("name"), row.getObject("id", UUID.class), row.getInt("number"),
                row.getInt("latest_number"), BankState.valueOf(row.getString("state")),
                row.getObject("nominal_voltage_v", Double.class), row.getInt("changed") == 1);
    }
}
