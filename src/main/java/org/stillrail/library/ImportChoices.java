package org.stillrail.library;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.stillrail.account.CurrentPerson;
import org.stillrail.sweepfile.ColumnMapping;

/** What can be chosen by name while importing: fixture sweeps and saved column mappings. */
@Component
class ImportChoices {

    private final FixtureSweeps fixtures;
    private final ColumnMappings mappings;
    private final Clock clock;

    ImportChoices(FixtureSweeps fixtures, ColumnMappings mappings, Clock clock) {
        this.fixtures = fixtures;
        this.mappings = mappings;
        this.clock = clock;
    }

    /** Adds {@code opens}, {@code shorts} and {@code loads}. */
    void addTo(Model model) {
        model.addAttribute("opens", fixtures(FixtureSweep.Standard.OPEN));
        model.addAttribute("shorts", fixtures(FixtureSweep.Standard.SHORT));
        model.addAttribute("loads", fixtures(FixtureSweep.Standard.LOAD));
    }

    Map<String, String> mappings() {
        return mappings.names();
    }

    /** @return false where the name is taken */
    boolean save(String name, ColumnMapping mapping, CurrentPerson author) {
        return mappings.insert(name, mapping, author, OffsetDateTime.now(clock));
    }

    private Map<String, String> fixtures(FixtureSweep.Standard standard) {
        Map<String, String> names = new LinkedHashMap<>();
        names.put("", "none");
        fixtures.all().stream().filter(fixture -> fixture.standard() == standard)
                .forEach(fixture -> names.put(fixture.id().toString(), fixture.label()));
        return names;
    }
}
