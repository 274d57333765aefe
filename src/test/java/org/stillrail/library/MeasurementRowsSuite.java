package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.DataIntegrityViolationException;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.account.StoredPerson;
import org.stillrail.electrical.quality.Finding;
import org.stillrail.electrical.quality.FindingKind;
import org.stillrail.electrical.quality.FrequencySpan;
import org.stillrail.support.AtOnce;
import org.stillrail.support.TestDatabase;
import org.stillrail.sweepfile.ColumnMapping;
import org.stillrail.sweepfile.accuracy.InstrumentAccuracy;
import org.stillrail.sweepfile.accuracy.ShieldLoop;

/** Fixtures, kept columns and accepted findings as they are stored, on either engine. */
abstract class MeasurementRowsSuite {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2031-01-02T03:04:05.123456Z");

    private final TestDatabase database;
    private final FixtureSweeps fixtures;
    private final ColumnMappings mappings;
    private final FindingAcceptances acceptances;
    private final RawFiles rawFiles;
    private final CurrentPerson librarian;
    private final String prefix = UUID.randomUUID().toString().substring(0, 8);

    MeasurementRowsSuite(TestDatabase database) {
        this.database = database;
        this.fixtures = new FixtureSweeps(database.jdbc());
        this.mappings = new ColumnMappings(database.jdbc());
        this.acceptances = new FindingAcceptances(database.jdbc());
        this.rawFiles = new RawFiles(database.jdbc());
        this.librarian = StoredPerson.with(database.jdbc(), Role.LIBRARIAN);
    }

    private FixtureSweep fixture(String name, FixtureSweep.Standard standard, Double loadOhm, String rawSha256) {
        SweepProvenance provenance = new SweepProvenance(null, "Somebody", LocalDate.of(2031, 1, 1), "bridge", "shunt-through", "Clamp \u03a9", null,
                null, 0, 23, null, null);
        MeasurementSetup setup = new MeasurementSetup(new InstrumentAccuracy(0.01, 0.02, 1e-6, 0.005), LocalDate.of(2030, 12, 31),
                new ShieldLoop(0.02, 0.03, 1e-4), 1.5e-10, null, null, null);
        SweepDocument document = new SweepDocument(provenance, "Touchstone", null, 50.0, List.of(), new double[] {10, 1e3, 1e8},
                new double[] {-0.0, 0.1 + 0.2, 2e23}, new double[] {Double.MIN_VALUE, -1e-9, 3}, setup);
        return new FixtureSweep(UUID.randomUUID(), prefix + name, standard, loadOhm, rawSha256, "file.s2p", librarian.displayName(), AT, document);
    }

    @Test
    void aFixtureComesBackAsItWasWritten() {
        String raw = rawFiles.keep(("fixture " + prefix).getBytes());
        FixtureSweep written = fixture("load", FixtureSweep.Standard.LOAD, 49.9, raw);
        assertThat(fixtures.insert(written, librarian)).isTrue();
        FixtureSweep read = fixtures.find(written.id()).orElseThrow();
        assertThat(read.name()).isEqualTo(prefix + "load");
        assertThat(read.loadOhm()).isEqualTo(49.9);
        assertThat(read.standard()).isEqualTo(FixtureSweep.Standard.LOAD);
        assertThat(read.madeAt().toInstant()).isEqualTo(AT.toInstant());
        assertThat(read.document().setup()).isEqualTo(written.document().setup());
        assertThat(read.document().provenance()).isEqualTo(written.document().provenance());
        assertThat(read.document().resistanceOhm()).containsExactly(-0.0, 0.1 + 0.2, 2e23);
        assertThat(read.document().reactanceOhm()).containsExactly(Double.MIN_VALUE, -1e-9, 3);
        assertThat(fixtures.withRaw(raw)).map(FixtureSweep::id).contains(written.id());
        assertThat(fixtures.withRaw("no such hash")).isEmpty();
    }

    @Test
    void anOpenHasNoLoadAndTheListIsByName() {
        String raw = rawFiles.keep(("open " + prefix).getBytes());
        fixtures.insert(fixture("b", FixtureSweep.Standard.OPEN, null, raw), librarian);
        fixtures.insert(fixture("a", FixtureSweep.Standard.SHORT, null, raw), librarian);
        List<FixtureSweep> ours = fixtures.all().stream().filter(one -> one.name().startsWith(prefix)).toList();
        assertThat(ours).extracting(FixtureSweep::name).containsExactly(prefix + "a", prefix + "b");
        assertThat(ours).extracting(FixtureSweep::loadOhm).containsOnlyNulls();
    }

    @Test
    void aNameIsTakenOnceEvenWhenManyWantIt() throws Exception {
        String raw = rawFiles.keep(("many " + prefix).getBytes());
        List<Boolean> won = AtOnce.times(5, () -> database.transaction().execute(status ->
                fixtures.insert(fixture("wanted", FixtureSweep.Standard.OPEN, null, raw), librarian)));
        assertThat(won).filteredOn(each -> each).hasSize(1);
        assertThat(fixtures.isTaken(prefix + "wanted")).isTrue();
        assertThat(fixtures.isTaken(prefix + "not wanted")).isFalse();
    }

    @Test
    void aFixtureNeedsItsRawFile() {
        assertThatThrownBy(() -> fixtures.insert(fixture("rawless", FixtureSweep.Standard.OPEN, null, "no such hash"), librarian))
                .isInstanceOf(DataIntegrityViolationException.class);
    }

    @Test
    void aStoredFixtureCannotBeChanged() {
        assumeTrue(database.isPostgres(), "triggers are the business of PostgreSQL alone");
        fixtures.insert(fixture("kept", FixtureSweep.Standard.OPEN, null, rawFiles.keep(("kept " + prefix).getBytes())), librarian);
        for (String change : List.of("update fixture_sweep set name = 'other'", "delete from fixture_sweep")) {
            assertThatThrownBy(() -> database.jdbc().sql(change).update()).isInstanceOf(DataAccessException.class)
                    .rootCause().hasMessageContaining("append-only");
        }
    }

    @Test
    void columnsAreKeptUnderOneNameOnce() {
        ColumnMapping mapping = ColumnMapping.parse("frequency=1:kHz, magnitude=2:mOhm, phase=3:rad, delimiter=semicolon, decimal=comma");
        assertThat(mappings.insert(prefix + "bridge", mapping, librarian, AT)).isTrue();
        assertThat(mappings.insert(prefix + "bridge", ColumnMapping.parse("frequency=1, resistance=2, reactance=3"), librarian, AT)).isFalse();
        String id = mappings.names().entrySet().stream().filter(entry -> entry.getValue().equals(prefix + "bridge")).findFirst().orElseThrow().getKey();
        assertThat(mappings.find(UUID.fromString(id))).contains(mapping);
        assertThat(mappings.find(UUID.randomUUID())).isEmpty();
    }

    @Test
    void oneKindOfFindingOfASweepIsAcceptedOnce() {
        Sweep sweep = sweep();
        Finding noise = new Finding(FindingKind.NOISE, "Points scatter \u2265 3 %.", List.of(new FrequencySpan(1, 2)));
        assertThat(acceptances.insert(sweep.id(), noise, "above the band we use", librarian, AT)).isTrue();
        assertThat(acceptances.insert(sweep.id(), noise, "another reason", librarian, AT.plusDays(1))).isFalse();
        assertThat(acceptances.insert(sweep.id(), new Finding(FindingKind.GAP, "No points.", List.of()), "known", librarian, AT.plusDays(1))).isTrue();
        assertThat(acceptances.ofSweep(sweep.id())).extracting(FindingAcceptance::kind).containsExactly(FindingKind.NOISE, FindingKind.GAP);
        FindingAcceptance first = acceptances.ofSweep(sweep.id()).get(0);
        assertThat(first.finding()).isEqualTo("Points scatter \u2265 3 %.");
        assertThat(first.reason()).isEqualTo("above the band we use");
        assertThat(first.person()).isEqualTo(librarian.displayName());
        assertThat(first.acceptedAt().toInstant()).isEqualTo(AT.toInstant());
    }

    private Sweep sweep() {
        Part part = new Parts(database.jdbc()).insert(SweepBench.part(prefix + "-accepted"), Vetting.PROPOSED, null, librarian, AT);
        SweepDocument document = fixture("unused", FixtureSweep.Standard.OPEN, null, "").document();
        return new Sweeps(database.jdbc()).insert(part.id(), rawFiles.keep(("sweep " + prefix).getBytes()), "a.csv", document, librarian, AT);
    }
}
