package org.stillrail;

import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Without {@code spring.datasource.url} the data lives in an H2 file under {@code stillrail.data-directory}. */
@Configuration(proxyBeanMethods = false)
class EmbeddedDatabaseConfiguration {

    /**
     * WRITE_DELAY=0 writes a commit out before it is answered, so a killed process loses nothing. The other options make H2
     * read our SQL as PostgreSQL does and let a writer wait longer than the default two seconds.
     */
    private static final String OPTIONS =
            ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;WRITE_DELAY=0;LOCK_TIMEOUT=10000";

    @Bean
    @ConditionalOnProperty(name = "spring.datasource.url", matchIfMissing = true, havingValue = "embedded")
    JdbcConnectionDetails embeddedDatabase(@Value("${stillrail.data-directory}") Path dataDirectory) {
        String url = "jdbc:h2:file:" + dataDirectory.toAbsolutePath().normalize().resolve("stillrail") + OPTIONS;
        return new JdbcConnectionDetails() {

            @Override
            public String getJdbcUrl() {
                return url;
            }

            @Override
            public String getUsername() {
                return "stillrail";
            }

            @Override
            public String getPassword() {
                return "";
            }
        };
    }
}
