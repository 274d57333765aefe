package org.stillrail.library;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.account.CurrentPerson;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Revision;
import org.stillrail.document.RevisionTable;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.web.SearchWords;

/** Stored parts and their revisions. */
@Repository
class Parts {

    private static final String LATEST = """
            from part p join part_revision r on r.subject_id = p.id and r.number = p.latest_number""";

    private final JdbcClient jdbc;
    private final RevisionTable<PartDocument> revisions;

    Parts(JdbcClient jdbc) {
        this.jdbc = jdbc;
        this.revisions = new RevisionTable<>(jdbc, "part_revision", PartDocument.class);
    }

    List<PartRow> list(PartFilter filter, int offset, int most) {
        Map<String, Object> parameters = new HashMap<>();
        String where = where(filter, parameters);
        parameters.put("offset", offset);
        parameters.put("most", most);
        // Revisions and sweeps are looked up for the lines of the page only; the condition on figures needs the revisions before.
        return jdbc.sql("""
                        select p.*, r.technology, r.capacitance_f, r.rated_voltage_v, (select count(*) from sweep s where s.part_id = p.id) as sweeps
                        from (select p.id, p.part_number, p.maker, p.vetting, p.latest_number
                        """ + (filter.asksForFigures() ? LATEST : "from part p") + where
                        + " order by p.part_number offset :offset rows fetch next :most rows only) p"
                        + " join part_revision r on r.subject_id = p.id and r.number = p.latest_number order by p.part_number")
                .params(parameters)
                .query(Parts::row)
                .list();
    }

    /** Numbers that begin with the first word of the filter's text before others, withdrawn parts last, else by number. */
    List<PartChoice> choices(PartFilter filter, int most) {
        Map<String, Object> parameters = new HashMap<>(Map.of("most", most));
        String where = where(filter, parameters);
        parameters.put("start", filter.text() == null ? "%" : SearchWords.of(filter.text()).beginning());
        String order = " order by case when p.vetting = 'WITHDRAWN' then 1 else 0 end,"
                + " case when lower(p.part_number) like :start escape '!' then 0 else 1 end, p.part_number";
        return choices((filter.asksForFigures() ? LATEST : "from part p") + where + order + " fetch next :most rows only", order, parameters);
    }

    List<PartChoice> choices(Set<UUID> ids) {
        return ids.isEmpty() ? List.of() : choices("from part p where p.id in (:ids)", " order by p.part_number", Map.of("ids", ids));
    }

    private List<PartChoice> choices(String from, String order, Map<String, ?> parameters) {
        return jdbc.sql("select p.id, p.part_number, p.vetting, p.vetting_reason, x.part_number as replaced_by, r.technology, r.capacitance_f,"
                        + " r.rated_voltage_v from (select p.id, p.part_number, p.vetting, p.vetting_reason, p.replacement_id, p.latest_number "
                        + from + ") p left join part x on x.id = p.replacement_id"
                        + " join part_revision r on r.subject_id = p.id and r.number = p.latest_number" + order)
                .params(parameters)
                .query((row, index) -> new PartChoice(row.getObject("id", UUID.class), row.getString("part_number"),
                        Vetting.valueOf(row.getString("vetting")), row.getString("vetting_reason"), row.getString("replaced_by"),
                        Technology.ofKey(row.getString("technology")), row.getDouble("capacitance_f"), row.getDouble("rated_voltage_v")))
                .list();
    }

    /** Newest revisions of all parts, by part number and with the number that the library lists. */
    List<PartDocument> allDocuments() {
        return jdbc.sql("select p.part_number, r.document " + LATEST + " order by p.part_number")
                .query((row, index) -> CanonicalJson.read(row.getString("document"), PartDocument.class)
                        .withPartNumber(row.getString("part_number")))
                .list();
    }

    int count(PartFilter filter) {
        Map<String, Object> parameters = new HashMap<>();
        String where = where(filter, parameters);
        return jdbc.sql("select count(*) " + (filter.asksForFigures() ? LATEST : "from part p") + where).params(parameters).query(Integer.class).single();
    }

    Optional<Part> find(UUID id) {
        return revisions.latest(id).flatMap(this::withPart);
    }

    Optional<Part> find(UUID id, int number) {
        return revisions.find(id, number).flatMap(this::withPart);
    }

    Optional<Part> findRevision(UUID revisionId) {
        return revisions.find(revisionId).flatMap(this::withPart);
    }

    Optional<Part> find(String partNumber) {
        return jdbc.sql("select id from part where part_number = :partNumber")
                .param("partNumber", partNumber)
                .query(UUID.class)
                .optional()
                .flatMap(this::find);
    }

    List<Revision<PartDocument>> history(UUID id) {
        return revisions.all(id);
    }

    /** A new part at revision 1. */
    Part insert(PartDocument document, Vetting vetting, String vettingReason, CurrentPerson author, OffsetDateTime at) {
        UUID id = UUID.randomUUID();
        jdbc.sql("""
                        insert into part (id, part_number, maker, vetting, vetting_reason, latest_number, version)
                        values (:id, :partNumber, :maker, :vetting, :reason, 1, 0)""")
                .param("id", id)
                .param("partNumber", document.partNumber())
                .param("maker", document.maker())
                .param("vetting", vetting.name())
                .param("reason", vettingReason)
                .update();
        return new Part(id, document.partNumber(), vetting, vettingReason, null, 1, 0, insertRevision(id, 1, document, author, at));
    }

    /** The next revision, unless somebody else changed the part since {@code version}. */
    boolean addRevision(Part part, PartDocument document, CurrentPerson author, OffsetDateTime at) {
        int number = part.latestNumber() + 1;
        int changed = jdbc.sql("""
                        update part set latest_number = :number, maker = :maker, version = version + 1
                        where id = :id and version = :version""")
                .param("number", number)
                .param("maker", document.maker())
                .param("id", part.id())
                .param("version", part.version())
                .update();
        if (changed == 0) {
            return false;
        }
        insertRevision(part.id(), number, document, author, at);
        return true;
    }

    /** @param replacementId null for none */
    boolean changeVetting(UUID id, long version, Vetting vetting, String reason, UUID replacementId, OffsetDateTime at) {
        return jdbc.sql("""
                        update part set vetting = :vetting, vetting_reason = :reason, replacement_id = :replacementId, vetting_changed_at = :at,
                            version = version + 1
                        where id = :id and version = :version""")
                .param("vetting", vetting.name())
                .param("at", at)
                .param("reason", reason)
                .param("replacementId", replacementId)
                .param("id", id)
                .param("version", version)
                .update() == 1;
    }

    private Revision<PartDocument> insertRevision(UUID id, int number, PartDocument document, CurrentPerson author, OffsetDateTime at) {
        return revisions.insert(id, number, author.id(), author.displayName(), at, document, Map.of(
                "technology", document.technology().key(),
                "capacitance_f", document.capacitanceF(),
                "rated_voltage_v", document.ratedVoltageV()));
    }

    private Optional<Part> withPart(Revision<PartDocument> revision) {
        return jdbc.sql("""
                        select p.part_number, p.vetting, p.vetting_reason, p.latest_number, p.version, x.id as replacement_id, x.part_number as replacement
                        from part p left join part x on x.id = p.replacement_id where p.id = :id""")
                .param("id", revision.subjectId())
                .query((row, index) -> new Part(
                        revision.subjectId(),
                        row.getString("part_number"),
                        Vetting.valueOf(row.getString("vetting")),
                        row.getString("vetting_reason"),
                        replacement(row),
                        row.getInt("latest_number"),
                        row.getLong("version"),
                        revision))
                .optional();
    }

    private static Part.Replacement replacement(ResultSet row) throws SQLException {
        UUID id = row.getObject("replacement_id", UUID.class);
        return id == null ? null : new Part.Replacement(id, row.getString("replacement"));
    }

    private static PartRow row(ResultSet row, int index) throws SQLException {
        return new PartRow(
                row.getObject("id", UUID.class),
                row.getString("part_number"),
                row.getString("maker"),
                Vetting.valueOf(row.getString("vetting")),
                row.getInt("latest_number"),
                Technology.ofKey(row.getString("technology")),
                row.getDouble("capacitance_f"),
                row.getDouble("rated_voltage_v"),
                row.getInt("sweeps"));
    }

    private static String where(PartFilter filter, Map<String, Object> parameters) {
        List<String> conditions = new ArrayList<>();
        if (filter.text() != null) {
            SearchWords words = SearchWords.of(filter.text());
            conditions.add(words.in("p.part_number", "p.maker"));
            parameters.putAll(words.parameters());
        }
        if (filter.technologies() != null && filter.technologies().isEmpty()) {
            conditions.add("1 = 0");
        } else if (filter.technologies() != null) {
            conditions.add("r.technology in (:technologies)");
            parameters.put("technologies", filter.technologies().stream().map(Technology::key).toList());
        }
        if (filter.capacitanceFromF() != null) {
            conditions.add("r.capacitance_f >= :fromF");
            parameters.put("fromF", filter.capacitanceFromF());
        }
        if (filter.capacitanceToF() != null) {
            conditions.add("r.capacitance_f <= :toF");
            parameters.put("toF", filter.capacitanceToF());
        }
        if (filter.ratedVoltageFromV() != null) {
            conditions.add("r.rated_voltage_v >= :fromV");
            parameters.put("fromV", filter.ratedVoltageFromV());
        }
        if (filter.vetting() != null) {
            conditions.add("p.vetting = :vetting");
            parameters.put("vetting", filter.vetting().name());
        }
        return conditions.isEmpty() ? "" : " where " + String.join(" and ", conditions);
    }
}
