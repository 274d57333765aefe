package org.stillrail.account;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What the database is for: nothing yet, a team's work, or the demo. */
@Repository
class Installation {

    enum Kind {
        DEMO,
        TEAM
    }

    private final JdbcClient jdbc;

    Installation(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Other servers that start, and other changes to who is in charge, wait here until this transaction ends. */
    Optional<Kind> lock() {
        return jdbc.sql("select kind from installation where id = 1 for update")
                .query((row, index) -> Optional.ofNullable(row.getString("kind")))
                .single()
                .map(text -> Kind.valueOf(text.toUpperCase(Locale.ROOT)));
    }

    void claim(Kind kind, Instant now) {
        jdbc.sql("update installation set kind = :kind, claimed_at = :now where id = 1")
                .param("kind", kind.name().toLowerCase(Locale.ROOT))
                .param("now", now.atOffset(ZoneOffset.UTC))
                .update();
    }
}
