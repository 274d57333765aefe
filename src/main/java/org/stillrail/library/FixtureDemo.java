package org.stillrail.library;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.DemoChapter;
import org.stillrail.account.DemoFiles;
import org.stillrail.account.DemoTeam;
import org.stillrail.sweepfile.ColumnMapping;
import org.stillrail.sweepfile.Fixture;
import org.stillrail.sweepfile.ReadOptions;
import org.stillrail.sweepfile.ReadSweep;
import org.stillrail.sweepfile.SweepReader;

/** The demo's fixture and the columns that it keeps under a name. */
@Component
@Order(110)
class FixtureDemo implements DemoChapter {

    private static final String FOLDER = "library/";

    private final FixtureSweeps fixtures;
    private final ColumnMappings mappings;
    private final RawFiles rawFiles;
    private final Clock clock;

    FixtureDemo(FixtureSweeps fixtures, ColumnMappings mappings, RawFiles rawFiles, Clock clock) {
        this.fixtures = fixtures;
        this.mappings = mappings;
        this.rawFiles = rawFiles;
        this.clock = clock;
    }

    private record DemoFixtures(List<DemoFixture> sweeps, List<DemoMapping> mappings) {
    }

    private record DemoFixture(
            String name, FixtureSweep.Standard standard, Double loadOhm, String file, String fixture, SweepProvenance provenance, String importedBy) {
    }

    private record DemoMapping(String name, String columns, String savedBy) {
    }

    @Override
    public void write(DemoTeam team) {
        OffsetDateTime now = OffsetDateTime.now(clock);
        DemoFixtures demo = DemoFiles.json(FOLDER + "fixtures.json", DemoFixtures.class);
        demo.sweeps().forEach(sweep -> add(sweep, LibraryDemo.importer(team, sweep.importedBy()), now));
        demo.mappings().forEach(mapping -> mappings.insert(mapping.name(), ColumnMapping.parse(mapping.columns()),
                LibraryDemo.importer(team, mapping.savedBy()), now));
    }

    private void add(DemoFixture demo, CurrentPerson importer, OffsetDateTime at) {
        byte[] bytes = DemoFiles.bytes(FOLDER + "fixtures/" + demo.file());
        ReadSweep read = SweepReader.read(bytes, demo.file(), ReadOptions.of(Fixture.of(demo.fixture())));
        SweepDocument document = new SweepDocument(demo.provenance(), read.format(), null, read.referenceOhm(), read.warnings(),
                read.frequencyHz(), read.resistanceOhm(), read.reactanceOhm(), null);
        fixtures.insert(new FixtureSweep(UUID.randomUUID(), demo.name(), demo.standard(), demo.loadOhm(), rawFiles.keep(bytes), demo.file(),
                importer.displayName(), at, document), importer);
    }
}
