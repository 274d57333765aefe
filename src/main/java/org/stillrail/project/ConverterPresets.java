package org.stillrail.project;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.requirement.ConverterFigures;

/** Stored converter presets. */
@Repository
class ConverterPresets {

    private final JdbcClient jdbc;

    ConverterPresets(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<ConverterPreset> all() {
        return jdbc.sql("select id, name, document from converter_preset order by name").query((row, index) -> new ConverterPreset(
                row.getObject("id", UUID.class),
                row.getString("name"),
                CanonicalJson.read(row.getString("document"), ConverterFigures.class))).list();
    }

    Optional<ConverterPreset> find(UUID id) {
        return all().stream().filter(preset -> preset.id().equals(id)).findFirst();
    }

    /** False where the name is taken. */
    boolean insert(String name, ConverterFigures converter, String by, OffsetDateTime at) {
        return jdbc.sql("""
                        insert into converter_preset (id, name, document, created_by, created_at)
                        values (:id, :name, :document, :by, :at) on conflict do nothing""")
                .param("id", UUID.randomUUID())
                .param("name", name)
                .param("document", CanonicalJson.write(converter))
                .param("by", by)
                .param("at", at)
                .update() == 1;
    }
}
