package org.stillrail.library;

import java.util.Optional;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.document.Sha256;
import org.stillrail.web.Download;

/** Uploaded files byte for byte, each stored once under its SHA-256. */
@Repository
class RawFiles {

    private final JdbcClient jdbc;

    RawFiles(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @return the SHA-256 under which the bytes are found again */
    String keep(byte[] bytes) {
        String sha256 = Sha256.of(bytes);
        jdbc.sql("insert into raw_file (sha256, size_bytes, content) values (:sha256, :size, :content) on conflict do nothing")
                .param("sha256", sha256)
                .param("size", bytes.length)
                .param("content", bytes)
                .update();
        return sha256;
    }

    /** Bytes as they came, to be kept and not opened. */
    static ResponseEntity<byte[]> download(String fileName, byte[] bytes) {
        return Download.of(fileName, MediaType.APPLICATION_OCTET_STREAM, bytes);
    }

    Optional<byte[]> find(String sha256) {
        return jdbc.sql("select content from raw_file where sha256 = :sha256").param("sha256", sha256).query(byte[].class).optional();
    }
}
