package org.stillrail.bank.bench;

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
import org.stillrail.bank.BenchKind;
import org.stillrail.library.SweepDocument;
import org.stillrail.library.SweepProvenance;
import org.stillrail.support.TestDatabase;

/** Records of the bench as they are stored, on either engine. */
abstract class BenchRowsSuite {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2031-01-02T03:04:05.123456Z");
    private static final LocalDate DAY = LocalDate.of(2031, 1, 1);

    private final TestDatabase database;
    private final BenchRecords records;
    private final CurrentPerson engineer;
    private final String raw = "raw-" + UUID.randomUUID();

    BenchRowsSuite(TestDatabase database) {
        this.database = database;
        this.records = new BenchRecords(database.jdbc());
        this.engineer = StoredPerson.with(database.jdbc(), Role.ENGINEER);
        database.jdbc().sql("insert into raw_file (sha256, size_bytes, content) values (:sha256, 1, :content)")
                .param("sha256", raw).param("content", new byte[] {1}).update();
    }

    @Test
    void anImpedanceComesBackToTheLastBit() {
        SweepProvenance provenance = new SweepProvenance(null, "Somebody", DAY, "analyser", "shunt-through", null, null, 0.02, 1.5, 23, null, "\u03a9");
        SweepDocument sweep = new SweepDocument(provenance, "Touchstone", null, 50.0, List.of("a warning"), new double[] {1, 2, 3},
                new double[] {0.1 + 0.2, -0.0, 2e23}, new double[] {Double.MIN_VALUE, -1, 1e-300}, null);
        BenchRecord written = record(revision(), BenchKind.IMPEDANCE, AT, new BenchDocument("Somebody", DAY, "analyser", null, sweep, 20.0, 50.0, null, null));
        records.insert(written, engineer);
        BenchRecord read = records.find(written.id()).orElseThrow();
        assertThat(read.kind()).isEqualTo(BenchKind.IMPEDANCE);
        assertThat(read.madeAt().toInstant()).isEqualTo(AT.toInstant());
        assertThat(read.document().tolerancePercent()).isEqualTo(20);
        assertThat(read.document().sweep().provenance()).isEqualTo(provenance);
        assertThat(read.document().sweep().resistanceOhm()).containsExactly(0.1 + 0.2, -0.0, 2e23);
        assertThat(read.document().sweep().reactanceOhm()).containsExactly(Double.MIN_VALUE, -1, 1e-300);
        assertThat(read.document().loop()).isNull();
    }

    @Test
    void loopAndTraceComeBackAndStandInTheOrderInWhichTheyWereAttached() {
        UUID revision = revision();
        BenchLoop loop = new BenchLoop(new double[] {1e3, 1e4}, new double[] {20, -3}, new double[] {-95.5, -120});
        BenchTrace trace = new BenchTrace(new double[] {-1e-6, 0, 1e-6}, new double[] {3.3, 3.3, 3.25}, 20e6);
        records.insert(record(revision, BenchKind.STEP, AT.plusSeconds(1), new BenchDocument("S", DAY, "i", "note", null, null, null, null, trace)), engineer);
        records.insert(record(revision, BenchKind.LOOP, AT, new BenchDocument("S", DAY, "i", null, null, null, null, loop, null)), engineer);
        List<BenchRecord> read = records.ofRevision(revision);
        assertThat(read).extracting(BenchRecord::kind).containsExactly(BenchKind.LOOP, BenchKind.STEP);
        assertThat(read.get(0).document().loop().phaseDeg()).containsExactly(-95.5, -120);
        assertThat(read.get(1).document().trace().voltageV()).containsExactly(3.3, 3.3, 3.25);
        assertThat(read.get(1).document().trace().bandwidthHz()).isEqualTo(20e6);
        assertThat(records.count(revision)).isEqualTo(2);
        assertThat(records.ofRevision(revision())).isEmpty();
        assertThat(records.find(UUID.randomUUID())).isEmpty();
    }

    @Test
    void aRecordNeedsItsRevisionAndItsRawFile() {
        BenchDocument document = new BenchDocument("S", DAY, "i", null, null, null, null, null, new BenchTrace(new double[0], new double[0], 1));
        assertThatThrownBy(() -> records.insert(record(UUID.randomUUID(), BenchKind.RIPPLE, AT, document), engineer))
                .isInstanceOf(DataIntegrityViolationException.class);
        BenchRecord rawless = new BenchRecord(UUID.randomUUID(), revision(), BenchKind.RIPPLE, "no such hash", "a.csv", "S", AT, document);
        assertThatThrownBy(() -> records.insert(rawless, engineer)).isInstanceOf(DataIntegrityViolationException.class);
    }

    @Test
    void aStoredRecordCannotBeChanged() {
        assumeTrue(database.isPostgres(), "triggers are the business of PostgreSQL alone");
        records.insert(record(revision(), BenchKind.RIPPLE, AT, new BenchDocument("S", DAY, "i", null, null, null, null, null, null)), engineer);
        for (String change : List.of("update bench_record set kind = 'LOOP'", "delete from bench_record")) {
            assertThatThrownBy(() -> database.jdbc().sql(change).update()).isInstanceOf(DataAccessException.class)
                    .rootCause().hasMessageContaining("append-only");
        }
    }

    private BenchRecord record(UUID revisionId, BenchKind kind, OffsetDateTime at, BenchDocument document) {
        return new BenchRecord(UUID.randomUUID(), revisionId, kind, raw, "a.csv", engineer.displayName(), at, document);
    }

    /** A revision in as few columns as records look at. */
    private UUID revision() {
        UUID bank = UUID.randomUUID();
        UUID revision = UUID.randomUUID();
        database.jdbc().sql("insert into bank (id, owner_id, owner, name, latest_number, version) values (:id, :owner, 'o', 'n', 1, 0)")
                .param("id", bank).param("owner", engineer.id()).update();
        database.jdbc().sql("""
                        insert into bank_revision (id, subject_id, number, author_id, author, made_at, document, sha256)
                        values (:id, :bank, 1, :author, 'a', :at, '{}', 'x')""")
                .param("id", revision).param("bank", bank).param("author", engineer.id()).param("at", AT).update();
        return revision;
    }
}
