package org.stillrail;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the web application. */
@SpringBootApplication
public class StillrailApplication {

    public static void main(String[] args) {
        SpringApplication.run(StillrailApplication.class, args);
    }
}
