package org.stillrail.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The stored hashes of API tokens. */
@Repository
class Tokens {

    private static final int NOTED_EVERY_SECONDS = 60;

    private final JdbcClient jdbc;

    Tokens(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    TokenRow insert(UUID personId, String name, String token, Instant now) {
        TokenRow row = new TokenRow(UUID.randomUUID(), personId, name, now.atOffset(ZoneOffset.UTC), null, null);
        jdbc.sql("""
                        insert into api_token (id, person_id, name, token_hash, created_at)
                        values (:id, :personId, :name, :hash, :now)""")
                .param("id", row.id())
                .param("personId", personId)
                .param("name", name)
                .param("hash", Secrets.hash(token))
                .param("now", row.createdAt())
                .update();
        return row;
    }

    /** The token that was presented, if it is ours and was not revoked. */
    Optional<TokenRow> presented(String token) {
        return jdbc.sql("select * from api_token where token_hash = :hash and revoked_at is null")
                .param("hash", Secrets.hash(token)).query(Tokens::row).optional();
    }

    Optional<TokenRow> byId(UUID id) {
        return jdbc.sql("select * from api_token where id = :id").param("id", id).query(Tokens::row).optional();
    }

    List<TokenRow> of(UUID personId) {
        return jdbc.sql("select * from api_token where person_id = :personId order by created_at desc, name")
                .param("personId", personId).query(Tokens::row).list();
    }

    boolean revoke(UUID id, Instant now) {
        return jdbc.sql("update api_token set revoked_at = :now where id = :id and revoked_at is null")
                .param("now", now.atOffset(ZoneOffset.UTC)).param("id", id).update() == 1;
    }

    /** Once a minute is enough to tell a used token from a forgotten one. */
    void noteUse(TokenRow token, Instant now) {
        OffsetDateTime at = now.atOffset(ZoneOffset.UTC);
        if (token.lastUsedAt() == null || token.lastUsedAt().isBefore(at.minusSeconds(NOTED_EVERY_SECONDS))) {
            jdbc.sql("update api_token set last_used_at = :now where id = :id").param("now", at).param("id", token.id()).update();
        }
    }

    private static TokenRow row(ResultSet row, int index) throws SQLException {
        return new TokenRow(
                row.getObject("id", UUID.class),
                row.getObject("person_id", UUID.class),
                row.getString("name"),
                row.getObject("created_at", OffsetDateTime.class),
                row.getObject("last_used_at", OffsetDateTime.class),
                row.getObject("revoked_at", OffsetDateTime.class));
    }
}
