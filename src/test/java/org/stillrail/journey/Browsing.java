package org.stillrail.journey;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ActiveProfiles;

/**
 * A class of journeys: its tests take as many {@link Visitor}s as parameters as they need, each with a browser session of
 * its own. All such classes share one demo application with one database, so data of one journey is seen by the next: use
 * names of your own. Skipped where no Chromium is, unless {@code stillrail.browser.required} is true.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@ExtendWith(BrowserExtension.class)
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=" + Browsing.DATABASE)
@ActiveProfiles("demo")
@interface Browsing {

    /** In memory, with the options of the embedded database. */
    String DATABASE = "jdbc:h2:mem:journeys;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000"
            + ";DB_CLOSE_DELAY=-1";
}
