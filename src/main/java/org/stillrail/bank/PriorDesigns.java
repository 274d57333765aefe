package org.stillrail.bank;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.project.RailTraits;

/** Approved banks of rails that resemble one, the nearest first by {@link RailTraits#distanceTo}. */
@Repository
class PriorDesigns {

    private final JdbcClient jdbc;

    PriorDesigns(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * What is looked for; null means any.
     *
     * @param technology  that some part of the bank is of
     * @param project     a pattern for {@code like} on the lower-case name
     * @param within      largest distance
     * @param exceptRail  whose own banks are left out
     */
    record Filter(Technology technology, String project, Double within, UUID exceptRail) {
    }

    /** An approved bank with the figures of the rail revision that it was judged against. */
    record PriorDesign(UUID bankId, UUID revisionId, String bank, int number, UUID railId, String rail, String project, RailTraits traits) {
    }

    /** A prior design with its distance. */
    record Near(PriorDesign design, double distance) {
    }

    /** An approved bank revision and how far its rail is from what is asked. */
    private record Candidate(UUID revisionId, double distance) {
    }

    /** The figures of all approved banks are compared here, since logarithms differ between engines; names are asked for the nearest only. */
    List<Near> near(RailTraits asked, Filter filter, int most) {
        Map<UUID, Double> distances = new LinkedHashMap<>();
        candidates(asked, filter).stream()
                .filter(each -> Double.isFinite(each.distance()) && (filter.within() == null || each.distance() <= filter.within()))
                .sorted(Comparator.comparingDouble(Candidate::distance).thenComparing(Candidate::revisionId))
                .limit(most)
                .forEach(each -> distances.put(each.revisionId(), each.distance()));
        return designs(distances.keySet()).stream()
                .map(design -> new Near(design, distances.get(design.revisionId())))
                .sorted(Comparator.comparingDouble(Near::distance).thenComparing(near -> near.design().bank()))
                .toList();
    }

    /** Each condition looks from the row in hand, so that no engine makes the same list again for every row. */
    private List<Candidate> candidates(RailTraits asked, Filter filter) {
        StringBuilder sql = new StringBuilder("""
                select r.id, v.nominal_voltage_v, v.nominal_current_a, v.switching_hz, v.load_step_a
                from bank_revision_state s join bank_revision r on r.id = s.revision_id join rail_revision v on v.id = r.rail_revision_id
                where s.state = 'APPROVED'
                """);
        Map<String, Object> parameters = new HashMap<>();
        if (filter.technology() != null) {
            sql.append("""
                    and exists (select 1 from bank_part u join part_revision t on t.id = u.part_revision_id
                        where u.revision_id = r.id and t.technology = :technology)
                    """);
            parameters.put("technology", filter.technology().key());
        }
        if (filter.project() != null) {
            sql.append("""
                    and exists (select 1 from rail l join project p on p.id = l.project_id
                        where l.id = v.subject_id and lower(p.name) like :project escape '!')
                    """);
            parameters.put("project", filter.project());
        }
        if (filter.exceptRail() != null) {
            sql.append("and v.subject_id <> :exceptRail");
            parameters.put("exceptRail", filter.exceptRail());
        }
        return jdbc.sql(sql.toString())
                .params(parameters)
                .query((row, index) -> new Candidate(row.getObject("id", UUID.class), asked.distanceTo(traits(row))))
                .list();
    }

    private List<PriorDesign> designs(Collection<UUID> revisionIds) {
        if (revisionIds.isEmpty()) {
            return List.of();
        }
        return jdbc.sql("""
                        select b.id as bank_id, r.id, b.name, r.number, l.id as rail_id, l.name as rail, p.name as project,
                            v.nominal_voltage_v, v.nominal_current_a, v.switching_hz, v.load_step_a
                        from bank_revision r join bank b on b.id = r.subject_id join rail_revision v on v.id = r.rail_revision_id
                        join rail l on l.id = b.rail_id join project p on p.id = l.project_id where r.id in (:ids)""")
                .param("ids", revisionIds)
                .query(PriorDesigns::row)
                .list();
    }

    private static PriorDesign row(ResultSet row, int index) throws SQLException {
        return new PriorDesign(row.getObject("bank_id", UUID.class), row.getObject("id", UUID.class), row.getString("name"), row.getInt("number"),
                row.getObject("rail_id", UUID.class), row.getString("rail"), row.getString("project"), traits(row));
    }

    private static RailTraits traits(ResultSet row) throws SQLException {
        double step = row.getDouble("load_step_a");
        Double loadStepA = row.wasNull() ? null : step;
        return new RailTraits(row.getDouble("nominal_voltage_v"), row.getDouble("nominal_current_a"), row.getDouble("switching_hz"), loadStepA);
    }

    /** Which parts are in it, by bank revision. */
    Map<UUID, String> phrases(List<UUID> revisionIds) {
        Map<UUID, List<String>> found = new HashMap<>();
        if (!revisionIds.isEmpty()) {
            jdbc.sql("""
                            select u.revision_id, p.part_number from bank_part u join part p on p.id = u.part_id
                            where u.revision_id in (:ids) order by p.part_number""")
                    .param("ids", revisionIds)
                    .query((row, index) -> found.computeIfAbsent(row.getObject("revision_id", UUID.class), id -> new ArrayList<>())
                            .add(row.getString("part_number")))
                    .list();
        }
        Map<UUID, String> phrases = new HashMap<>();
        found.forEach((id, parts) -> phrases.put(id, String.join(", ", parts)));
        return phrases;
    }
}
