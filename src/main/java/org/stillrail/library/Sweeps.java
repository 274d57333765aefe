package org.stillrail.library;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.account.CurrentPerson;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Sha256;

/** Stored sweeps; inserted once, never changed. */
@Repository
class Sweeps {

    private final JdbcClient jdbc;

    Sweeps(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Sweep insert(UUID partId, String rawSha256, String fileName, SweepDocument document, CurrentPerson importer, OffsetDateTime at) {
        String json = CanonicalJson.write(document);
        Sweep sweep = new Sweep(UUID.randomUUID(), partId, rawSha256, fileName, importer.displayName(), at, Sha256.of(json), document);
        jdbc.sql("""
                        insert into sweep (id, part_id, raw_sha256, file_name, importer_id, importer, imported_at, document, sha256,
                          points, start_hz, stop_hz)
                        values (:id, :partId, :rawSha256, :fileName, :importerId, :importer, :importedAt, :document, :sha256,
                          :points, :startHz, :stopHz)""")
                .param("id", sweep.id())
                .param("partId", partId)
                .param("rawSha256", rawSha256)
                .param("fileName", fileName)
                .param("importerId", importer.id())
                .param("importer", sweep.importer())
                .param("importedAt", at)
                .param("document", json)
                .param("sha256", sweep.sha256())
                .param("points", sweep.points())
                .param("startHz", sweep.startHz())
                .param("stopHz", sweep.stopHz())
                .update();
        return sweep;
    }

    List<Sweep> ofPart(UUID partId) {
        return jdbc.sql("select * from sweep where part_id = :partId order by imported_at, id")
                .param("partId", partId)
                .query(Sweeps::map)
                .list();
    }

    Optional<Sweep> find(UUID id) {
        return jdbc.sql("select * from sweep where id = :id").param("id", id).query(Sweeps::map).optional();
    }

    /** Where the same bytes were imported before. */
    List<Sweep> withRaw(String rawSha256) {
        return jdbc.sql("select * from sweep where raw_sha256 = :sha256 order by imported_at, id")
                .param("sha256", rawSha256)
                .query(Sweeps::map)
                .list();
    }

    private static Sweep map(ResultSet row, int index) throws SQLException {
        return new Sweep(
                row.getObject("id", UUID.class),
                row.getObject("part_id", UUID.class),
                row.getString("raw_sha256"),
                row.getString("file_name"),
                row.getString("importer"),
                row.getObject("imported_at", OffsetDateTime.class),
                row.getString("sha256"),
                CanonicalJson.read(row.getString("document"), SweepDocument.class));
    }
}
