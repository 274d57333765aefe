package org.stillrail.architecture.planted.sweepfile;

import org.springframework.jdbc.core.simple.JdbcClient;

/** A reader of files that stores them itself. */
class OpensTheDatabase {

    long offends(JdbcClient jdbc) {
        return jdbc.sql("select 1").query(Long.class).single();
    }
}
