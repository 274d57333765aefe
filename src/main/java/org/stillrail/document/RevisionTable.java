package org.stillrail.document;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The one way in which revisions are stored: a table of rows that are inserted and never updated. All such tables share
 * the columns {@code id, subject_id, number, author_id, author, made_at, document, sha256}; a table may have a few more
 * to search by.
 */
public final class RevisionTable<T> {

    private final JdbcClient jdbc;
    private final String table;
    private final Class<T> type;

    /** @param table a name of ours, never a user's text */
    public RevisionTable(JdbcClient jdbc, String table, Class<T> type) {
        this.jdbc = jdbc;
        this.table = table;
        this.type = type;
    }

    /**
     * Inserts a revision.
     *
     * @param searchColumns further columns of this table by name
     * @return the revision with its hash
     */
    public Revision<T> insert(
            UUID subjectId, int number, UUID authorId, String author, OffsetDateTime madeAt, T document, Map<String, ?> searchColumns) {
        String json = CanonicalJson.write(document);
        Revision<T> revision = new Revision<>(UUID.randomUUID(), subjectId, number, authorId, author, madeAt, document, Sha256.of(json));
        StringJoiner names = new StringJoiner(", ");
        StringJoiner values = new StringJoiner(", ");
        searchColumns.keySet().forEach(name -> {
            names.add(name);
            values.add(":" + name);
        });
        String more = searchColumns.isEmpty() ? "" : ", " + names;
        String moreValues = searchColumns.isEmpty() ? "" : ", " + values;
        jdbc.sql("insert into " + table + " (id, subject_id, number, author_id, author, made_at, document, sha256" + more
                        + ") values (:id, :subjectId, :number, :authorId, :author, :madeAt, :document, :sha256" + moreValues + ")")
                .param("id", revision.id())
                .param("subjectId", subjectId)
                .param("number", number)
                .param("authorId", authorId)
                .param("author", author)
                .param("madeAt", madeAt)
                .param("document", json)
                .param("sha256", revision.sha256())
                .params(searchColumns)
                .update();
        return revision;
    }

    public Optional<Revision<T>> find(UUID revisionId) {
        return jdbc.sql("select * from " + table + " where id = :id").param("id", revisionId).query(this::map).optional();
    }

    public Optional<Revision<T>> find(UUID subjectId, int number) {
        return jdbc.sql("select * from " + table + " where subject_id = :subjectId and number = :number")
                .param("subjectId", subjectId)
                .param("number", number)
                .query(this::map)
                .optional();
    }

    public Optional<Revision<T>> latest(UUID subjectId) {
        return jdbc.sql("select * from " + table + " where subject_id = :subjectId order by number desc fetch first 1 row only")
                .param("subjectId", subjectId)
                .query(this::map)
                .optional();
    }

    /** All revisions of a subject, newest first. */
    public List<Revision<T>> all(UUID subjectId) {
        return jdbc.sql("select * from " + table + " where subject_id = :subjectId order by number desc")
                .param("subjectId", subjectId)
                .query(this::map)
                .list();
    }

    /** For queries of a room's own that join this table: the row must have all of its shared columns under their names. */
    public Revision<T> map(ResultSet row, int index) throws SQLException {
        return new Revision<>(
                row.getObject("id", UUID.class),
                row.getObject("subject_id", UUID.class),
                row.getInt("number"),
                row.getObject("author_id", UUID.class),
                row.getString("author"),
                row.getObject("made_at", OffsetDateTime.class),
                CanonicalJson.read(row.getString("document"), type),
                row.getString("sha256"));
    }
}
