package org.stillrail.bank.bench;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.account.CurrentPerson;
import org.stillrail.bank.BenchKind;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Sha256;

/** Stored records of the bench; inserted once, never changed. */
@Repository
class BenchRecords {

    private final JdbcClient jdbc;

    BenchRecords(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void insert(BenchRecord record, CurrentPerson author) {
        String json = CanonicalJson.write(record.document());
        jdbc.sql("""
                        insert into bench_record (id, revision_id, kind, raw_sha256, file_name, author_id, author, made_at, document, sha256)
                        values (:id, :revisionId, :kind, :rawSha256, :fileName, :authorId, :author, :madeAt, :document, :sha256)""")
                .param("id", record.id())
                .param("revisionId", record.revisionId())
                .param("kind", record.kind().name())
                .param("rawSha256", record.rawSha256())
                .param("fileName", record.fileName())
                .param("authorId", author.id())
                .param("author", record.author())
                .param("madeAt", record.madeAt())
                .param("document", json)
                .param("sha256", Sha256.of(json))
                .update();
    }

    List<BenchRecord> ofRevision(UUID revisionId) {
        return jdbc.sql("select * from bench_record where revision_id = :revisionId order by made_at, id")
                .param("revisionId", revisionId).query(BenchRecords::map).list();
    }

    Optional<BenchRecord> find(UUID id) {
        return jdbc.sql("select * from bench_record where id = :id").param("id", id).query(BenchRecords::map).optional();
    }

    int count(UUID revisionId) {
        return jdbc.sql("select count(*) from bench_record where revision_id = :revisionId").param("revisionId", revisionId)
                .query(Integer.class).single();
    }

    private static BenchRecord map(ResultSet row, int index) throws SQLException {
        return new BenchRecord(
                row.getObject("id", UUID.class),
                row.getObject("revision_id", UUID.class),
                BenchKind.valueOf(row.getString("kind")),
                row.getString("raw_sha256"),
                row.getString("file_name"),
                row.getString("author"),
                row.getObject("made_at", OffsetDateTime.class),
                CanonicalJson.read(row.getString("document"), BenchDocument.class));
    }
}
