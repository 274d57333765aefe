package org.stillrail.library;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.account.CurrentPerson;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Sha256;

/** Stored sweeps of fixtures; inserted once, never changed. */
@Repository
class FixtureSweeps {

    private final JdbcClient jdbc;

    FixtureSweeps(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @return false where the name is taken */
    boolean insert(FixtureSweep fixture, CurrentPerson author) {
        String json = CanonicalJson.write(fixture.document());
        return jdbc.sql("""
                        insert into fixture_sweep (id, name, standard, load_ohm, raw_sha256, file_name, author_id, author, made_at, document, sha256)
                        values (:id, :name, :standard, :loadOhm, :rawSha256, :fileName, :authorId, :author, :madeAt, :document, :sha256)
                        on conflict do nothing""")
                .param("id", fixture.id())
                .param("name", fixture.name())
                .param("standard", fixture.standard().name())
                .param("loadOhm", fixture.loadOhm())
                .param("rawSha256", fixture.rawSha256())
                .param("fileName", fixture.fileName())
                .param("authorId", author.id())
                .param("author", fixture.author())
                .param("madeAt", fixture.madeAt())
                .param("document", json)
                .param("sha256", Sha256.of(json))
                .update() == 1;
    }

    boolean isTaken(String name) {
        return jdbc.sql("select count(*) from fixture_sweep where name = :name").param("name", name).query(Integer.class).single() > 0;
    }

    Optional<FixtureSweep> withRaw(String rawSha256) {
        return jdbc.sql("select * from fixture_sweep where raw_sha256 = :sha256 order by made_at, id").param("sha256", rawSha256)
                .query(FixtureSweeps::map).list().stream().findFirst();
    }

    List<FixtureSweep> all() {
        return jdbc.sql("select * from fixture_sweep order by name").query(FixtureSweeps::map).list();
    }

    /** Names of those with this standard, by identity, in the order of the names. */
    Map<UUID, String> names(FixtureSweep.Standard standard) {
        Map<UUID, String> names = new LinkedHashMap<>();
        jdbc.sql("select id, name from fixture_sweep where standard = :standard order by name").param("standard", standard.name())
                .query((row, index) -> names.put(row.getObject("id", UUID.class), row.getString("name"))).list();
        return names;
    }

    Optional<FixtureSweep> find(UUID id) {
        return jdbc.sql("select * from fixture_sweep where id = :id").param("id", id).query(FixtureSweeps::map).optional();
    }

    private static FixtureSweep map(ResultSet row, int index) throws SQLException {
        return new FixtureSweep(
                row.getObject("id", UUID.class),
                row.getString("name"),
                FixtureSweep.Standard.valueOf(row.getString("standard")),
                row.getObject("load_ohm", Double.class),
                row.getString("raw_sha256"),
                row.getString("file_name"),
                row.getString("author"),
                row.getObject("made_at", OffsetDateTime.class),
                CanonicalJson.read(row.getString("document"), SweepDocument.class));
    }
}
