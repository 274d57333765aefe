package org.stillrail.support;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Import;

/**
 * The whole application on a random port, with MockMvc beside it and an H2 of its own in memory. All classes that carry this
 * and nothing else share one context, so data of one test is seen by the next: use names of your own and do not count rows.
 * {@link TestPeople} has someone of every role.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@Inherited
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.datasource.url=" + AppTest.DATABASE)
@AutoConfigureMockMvc
@Import(TestPeopleConfiguration.class)
public @interface AppTest {

    /** In memory, with the options of the embedded database. */
    String DATABASE = "jdbc:h2:mem:app;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000"
            + ";DB_CLOSE_DELAY=-1";
}
