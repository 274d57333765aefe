package org.stillrail;

import java.time.Clock;
import java.time.Duration;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Bean;

/** Starts the web application. */
@SpringBootApplication
public class StillrailApplication {

    public static void main(String[] args) {
        SpringApplication.run(StillrailApplication.class, args);
    }

    /** UTC in whole microseconds: what both databases keep, so that a time can be hashed before it is stored. */
    @Bean
    Clock clock() {
        return Clock.tick(Clock.systemUTC(), Duration.ofNanos(1_000));
    }
}
