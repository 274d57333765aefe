package org.stillrail.library;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

/** The demo's parts and sweeps, read from files that a user could have. */
@Component
@Order(100)
class LibraryDemo implements DemoChapter {

    private static final String FOLDER = "library/";

    private final Parts parts;
    private final Sweeps sweeps;
    private final RawFiles rawFiles;
    private final Clock clock;

    LibraryDemo(Parts parts, Sweeps sweeps, RawFiles rawFiles, Clock clock) {
        this.parts = parts;
        this.sweeps = sweeps;
        this.rawFiles = rawFiles;
        this.clock = clock;
    }

    /**
     * @param replacement number of what takes the place of a withdrawn part, or null
     * @param modelSweep  the file whose sweep the librarian chose as the model, or null
     */
    private record DemoPart(PartDocument part, Vetting vetting, String vettingReason, String replacement, ChosenSweep modelSweep) {
    }

    private record ChosenSweep(String file, String reason) {
    }

    /** @param setup of instrument and fixture, or null */
    private record DemoSweep(
            String partNumber, String file, String fixture, String columns, SweepProvenance provenance, MeasurementSetup setup, String importedBy) {
    }

    @Override
    public void write(DemoTeam team) {
        OffsetDateTime now = OffsetDateTime.now(clock);
        Map<String, Part> byNumber = new HashMap<>();
        List<DemoPart> demoParts = List.of(DemoFiles.json(FOLDER + "parts.json", DemoPart[].class));
        for (DemoPart demo : demoParts) {
            PartDocument document = demo.part().withModel(ModelChoice.DATASHEET);
            byNumber.put(document.partNumber(), parts.insert(document, demo.vetting(), demo.vettingReason(), team.engineer(), now));
        }
        Map<String, Sweep> byFile = new HashMap<>();
        for (DemoSweep demo : DemoFiles.json(FOLDER + "sweeps.json", DemoSweep[].class)) {
            byFile.put(demo.file(), add(demo, byNumber.get(demo.partNumber()), importer(team, demo.importedBy()), now));
        }
        for (DemoPart demo : demoParts) {
            ChosenSweep chosen = demo.modelSweep();
            if (chosen != null) {
                Part part = byNumber.get(demo.part().partNumber());
                ModelChoice choice = new ModelChoice(ModelChoice.Kind.SWEEP, byFile.get(chosen.file()).id(), chosen.reason());
                parts.addRevision(part, part.document().withModel(choice), team.librarian(), now);
            }
        }
        for (DemoPart demo : demoParts) {
            if (demo.replacement() != null) {
                Part part = parts.find(demo.part().partNumber()).orElseThrow();
                parts.changeVetting(part.id(), part.version(), demo.vetting(), demo.vettingReason(), byNumber.get(demo.replacement()).id(), now);
            }
        }
    }

    private Sweep add(DemoSweep demo, Part part, CurrentPerson importer, OffsetDateTime at) {
        byte[] bytes = DemoFiles.bytes(FOLDER + "sweeps/" + demo.file());
        ColumnMapping mapping = demo.columns() == null ? null : ColumnMapping.parse(demo.columns());
        ReadSweep read = SweepReader.read(bytes, demo.file(), ReadOptions.of(Fixture.of(demo.fixture())).withColumns(mapping));
        SweepDocument document = new SweepDocument(demo.provenance(), read.format(), demo.columns(), read.referenceOhm(), read.warnings(),
                read.frequencyHz(), read.resistanceOhm(), read.reactanceOhm(), demo.setup());
        return sweeps.insert(part.id(), rawFiles.keep(bytes), demo.file(), document, importer, at);
    }

    static CurrentPerson importer(DemoTeam team, String userName) {
        return userName.equals(team.librarian().userName()) ? team.librarian() : team.engineer();
    }
}
