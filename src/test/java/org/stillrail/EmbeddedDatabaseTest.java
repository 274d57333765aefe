package org.stillrail;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;

class EmbeddedDatabaseTest {

    private final ApplicationContextRunner runner =
            new ApplicationContextRunner().withUserConfiguration(EmbeddedDatabaseConfiguration.class);

    @Test
    void aRelativeDirectoryBecomesAnAbsoluteFile() {
        runner.withPropertyValues("stillrail.data-directory=some/../data").run(context -> {
            String url = context.getBean(JdbcConnectionDetails.class).getJdbcUrl();
            assertThat(url)
                    .startsWith("jdbc:h2:file:" + Path.of("data/stillrail").toAbsolutePath() + ";")
                    .contains("WRITE_DELAY=0", "MODE=PostgreSQL", "LOCK_TIMEOUT=10000");
        });
    }

    @Test
    void aDatabaseOfOnesOwnIsUsedInstead() {
        runner.withPropertyValues("stillrail.data-directory=data", "spring.datasource.url=jdbc:postgresql://db/stillrail")
                .run(context -> assertThat(context).doesNotHaveBean(JdbcConnectionDetails.class));
    }
}
