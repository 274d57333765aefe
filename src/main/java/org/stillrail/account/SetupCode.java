package org.stillrail.account;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * The code that lets whoever reads the server's log make the first administrator, once. Only its hash is stored. All calls
 * belong inside a transaction that holds the lock of {@link Installation}.
 */
@Repository
class SetupCode {

    /** Servers that start together share one code; a later start makes a new one, because the log may be gone. */
    static final Duration STARTED_TOGETHER = Duration.ofMinutes(2);

    private final JdbcClient jdbc;
    private final People people;
    private final Clock clock;

    SetupCode(JdbcClient jdbc, People people, Clock clock) {
        this.jdbc = jdbc;
        this.people = people;
        this.clock = clock;
    }

    /** What to write into the log; empty when there is a person already. */
    Optional<String> renewIfNeeded() {
        if (!people.none()) {
            return Optional.empty();
        }
        Instant now = clock.instant();
        Optional<Instant> made = jdbc.sql("select created_at from setup_code where id = 1")
                .query(OffsetDateTime.class).optional().map(OffsetDateTime::toInstant);
        if (made.isPresent() && made.get().plus(STARTED_TOGETHER).isAfter(now)) {
            return Optional.of("Another server that started at " + made.get() + " has printed the setup code for /setup. "
                    + "If it is lost, start once more after " + made.get().plus(STARTED_TOGETHER) + ": that makes a new one.");
        }
        String code = Secrets.legible();
        store(code, now);
        return Optional.of("Nobody has an account yet. Open /setup and make the first administrator with this code, "
                + "which works once: " + code);
    }

    /** True if this is the code and it was not used before; from then on it is used. */
    boolean use(String code) {
        Optional<String> hash = jdbc.sql("select code_hash from setup_code where id = 1 and used_at is null")
                .query(String.class).optional();
        if (hash.isEmpty() || !Secrets.matches(code, hash.get())) {
            return false;
        }
        jdbc.sql("update setup_code set used_at = :now where id = 1")
                .param("now", clock.instant().atOffset(ZoneOffset.UTC)).update();
        return true;
    }

    private void store(String code, Instant now) {
        jdbc.sql("delete from setup_code").update();
        jdbc.sql("insert into setup_code (id, code_hash, created_at) values (1, :hash, :now)")
                .param("hash", Secrets.hash(code)).param("now", now.atOffset(ZoneOffset.UTC)).update();
    }
}
