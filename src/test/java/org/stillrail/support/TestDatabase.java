package org.stillrail.support;

import com.zaxxer.hikari.HikariDataSource;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.UUID;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * A migrated database for the data-layer suites: an abstract class holds the assertions and has one subclass for each engine,
 * {@code super(TestDatabase.h2())} and {@code super(TestDatabase.postgres())}. Both are shared by all suites of a run, so use
 * names of your own; {@link #freshH2()} and {@link #freshPostgres()} are for tests that need an empty database.
 */
public final class TestDatabase implements AutoCloseable {

    private static final String H2_OPTIONS =
            ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000;DB_CLOSE_DELAY=-1";

    private static TestDatabase sharedH2;
    private static TestDatabase sharedPostgres;
    private static EmbeddedPostgres server;

    private final String url;
    private final HikariDataSource dataSource;
    private final boolean postgres;

    private TestDatabase(String url, boolean postgres) {
        this.url = url;
        this.postgres = postgres;
        this.dataSource = new HikariDataSource();
        dataSource.setJdbcUrl(url);
        dataSource.setMaximumPoolSize(10);
        dataSource.setMinimumIdle(0);
    }

    public static synchronized TestDatabase h2() {
        if (sharedH2 == null) {
            sharedH2 = freshH2();
        }
        return sharedH2;
    }

    /** A real PostgreSQL that runs as a child process without Docker. */
    public static synchronized TestDatabase postgres() {
        if (sharedPostgres == null) {
            sharedPostgres = freshPostgres();
        }
        return sharedPostgres;
    }

    public static TestDatabase freshH2() {
        return new TestDatabase(emptyH2Url(), false).migrated();
    }

    public static TestDatabase freshPostgres() {
        return new TestDatabase(emptyPostgresUrl(), true).migrated();
    }

    /** URL of a new H2 in memory without any table, for {@code spring.datasource.url}. */
    public static String emptyH2Url() {
        return "jdbc:h2:mem:" + UUID.randomUUID() + H2_OPTIONS;
    }

    /** URL (with user) of a new PostgreSQL database without any table, for {@code spring.datasource.url}. */
    public static synchronized String emptyPostgresUrl() {
        try {
            if (server == null) {
                server = EmbeddedPostgres.builder().start();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("PostgreSQL did not start", e);
        }
        String name = "test_" + UUID.randomUUID().toString().replace("-", "");
        JdbcClient.create(server.getPostgresDatabase()).sql("create database " + name).update();
        return server.getJdbcUrl("postgres", name);
    }

    private TestDatabase migrated() {
        Flyway.configure()
                .dataSource(dataSource)
                .locations("classpath:db/migration", "classpath:db/vendor/" + (postgres ? "postgresql" : "h2"))
                .load()
                .migrate();
        return this;
    }

    public String url() {
        return url;
    }

    public boolean isPostgres() {
        return postgres;
    }

    public DataSource dataSource() {
        return dataSource;
    }

    public JdbcClient jdbc() {
        return JdbcClient.create(dataSource);
    }

    /** For what the application does under {@code @Transactional}. */
    public TransactionTemplate transaction() {
        return new TransactionTemplate(new DataSourceTransactionManager(dataSource));
    }

    /** For a fresh database, when its test is over. */
    @Override
    public void close() {
        dataSource.close();
    }

    @Override
    public String toString() {
        return postgres ? "PostgreSQL" : "H2";
    }
}
