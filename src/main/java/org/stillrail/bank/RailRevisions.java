package org.stillrail.bank;

import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which revision of a rail is the newest; read here because the room of projects asks this room back. */
@Repository
class RailRevisions {

    private final JdbcClient jdbc;

    RailRevisions(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    UUID newestOf(UUID railId) {
        return jdbc.sql("select v.id from rail_revision v join rail r on r.id = v.subject_id and r.latest_number = v.number where r.id = :id")
                .param("id", railId)
                .query(UUID.class)
                .single();
    }
}
