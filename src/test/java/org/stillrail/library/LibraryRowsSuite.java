package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.DuplicateKeyException;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.account.StoredPerson;
import org.stillrail.document.CanonicalJson;
import org.stillrail.document.Sha256;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.support.AtOnce;
import org.stillrail.support.TestDatabase;
import org.stillrail.web.Findable;
import org.stillrail.web.Quantity;
import org.stillrail.web.SearchWords;

/** Parts, sweeps and raw files as they are stored, on either engine. */
abstract class LibraryRowsSuite {

    /** With microseconds, the finest that both engines keep. */
    private static final OffsetDateTime AT = OffsetDateTime.parse("2031-01-02T03:04:05.123456Z");
    private static final int LARGEST_FILE = 20 * 1024 * 1024;

    private final TestDatabase database;
    private final Parts parts;
    private final Sweeps sweeps;
    private final RawFiles rawFiles;
    private final CurrentPerson librarian;
    private final String prefix = UUID.randomUUID().toString().substring(0, 8);

    LibraryRowsSuite(TestDatabase database) {
        this.database = database;
        this.parts = new Parts(database.jdbc());
        this.sweeps = new Sweeps(database.jdbc());
        this.rawFiles = new RawFiles(database.jdbc());
        this.librarian = StoredPerson.with(database.jdbc(), Role.LIBRARIAN);
    }

    private PartDocument document(String name, double capacitanceF, String note) {
        return numbered(prefix + name, capacitanceF, note);
    }

    private PartDocument numbered(String partNumber, double capacitanceF, String note) {
        return new PartDocument(partNumber, "Notional " + prefix, Technology.POLYMER_ALUMINIUM, capacitanceF,
                new PartDocument.Tolerance(20, 20), 16,
                List.of(new LossFigure(LossFigure.Kind.ESR, 0.018, 100e3, LossFigure.Bound.MAXIMUM)), 4e-9, null,
                new PartDocument.RippleRating(3.2, 100e3, 105.0), -55.0, 105.0, new PartDocument.Endurance(2000, 105), null, "8 x 7",
                null, 0.008, 0.007, new BigDecimal("0.31"), new PartDocument.DatasheetReference("Sheet \u03a9-7", "B", "4"),
                ModelChoice.DATASHEET, null, note, null);
    }

    private Part stored(String name, double capacitanceF) {
        return parts.insert(document(name, capacitanceF, null), Vetting.PROPOSED, null, librarian, AT);
    }

    private static SweepDocument sweep(double... reactanceOhm) {
        double[] frequencyHz = new double[reactanceOhm.length];
        double[] resistanceOhm = new double[reactanceOhm.length];
        for (int i = 0; i < reactanceOhm.length; i++) {
            frequencyHz[i] = 1000 * (i + 1);
            resistanceOhm[i] = 1e-3 / (i + 1);
        }
        SweepProvenance provenance = new SweepProvenance("S1", "Somebody", LocalDate.of(2031, 1, 1), "bridge", "shunt-through", null,
                "open, short", 0.1, 2.5, 23, null, "Note; with \"quotes\" and \u20ac");
        return new SweepDocument(provenance, "Touchstone", null, 50.0, List.of("A warning"), frequencyHz, resistanceOhm, reactanceOhm, null);
    }

    @Test
    void aPartComesBackAsItWasWritten() {
        PartDocument document = document("-whole", 100e-6, "Two lines,\nthe second with \u00b5 and \u201cquotes\u201d");
        Part written = parts.insert(document, Vetting.RESTRICTED, "only below 60 degC", librarian, AT);
        Part read = parts.find(written.id()).orElseThrow();
        assertThat(read).isEqualTo(written);
        assertThat(read.document()).isEqualTo(document);
        assertThat(read.revision().madeAt().toInstant()).isEqualTo(AT.toInstant());
        assertThat(read.revision().sha256()).isEqualTo(Sha256.of(CanonicalJson.write(document)));
        assertThat(parts.find(document.partNumber())).contains(read);
        assertThat(parts.findRevision(read.revision().id())).contains(read);
    }

    @Test
    void olderRevisionsStayReadable() {
        Part first = stored("-revised", 100e-6);
        assertThat(parts.addRevision(first, document("-revised", 120e-6, "Corrected"), librarian, AT.plusDays(1))).isTrue();
        assertThat(parts.find(first.id()).orElseThrow().document().capacitanceF()).isEqualTo(120e-6);
        assertThat(parts.find(first.id(), 1).orElseThrow().document()).isEqualTo(first.document());
        assertThat(parts.history(first.id())).extracting(revision -> revision.number()).containsExactly(2, 1);
    }

    @Test
    void aStaleVersionChangesNothing() {
        Part seen = stored("-stale", 100e-6);
        assertThat(parts.addRevision(seen, document("-stale", 120e-6, "First"), librarian, AT)).isTrue();
        assertThat(parts.addRevision(seen, document("-stale", 150e-6, "Second"), librarian, AT)).isFalse();
        assertThat(parts.changeVetting(seen.id(), seen.version(), Vetting.VETTED, null, null, AT)).isFalse();
        Part now = parts.find(seen.id()).orElseThrow();
        assertThat(now.document().note()).isEqualTo("First");
        assertThat(now.vetting()).isEqualTo(Vetting.PROPOSED);
        assertThat(parts.changeVetting(seen.id(), now.version(), Vetting.VETTED, null, null, AT)).isTrue();
        assertThat(parts.find(seen.id()).orElseThrow().vetting()).isEqualTo(Vetting.VETTED);
    }

    @Test
    void ofManyWhoReviseAtOnceExactlyOneWins() throws Exception {
        Part seen = stored("-contended", 100e-6);
        List<Boolean> won = AtOnce.times(6, () -> database.transaction().execute(status ->
                parts.addRevision(seen, document("-contended", 120e-6, "Changed"), librarian, AT)));
        assertThat(won).filteredOn(each -> each).hasSize(1);
        assertThat(parts.history(seen.id())).hasSize(2);
        assertThat(parts.find(seen.id()).orElseThrow().latestNumber()).isEqualTo(2);
    }

    @Test
    void aPartNumberIsTakenOnce() {
        stored("-once", 1e-6);
        assertThatThrownBy(() -> stored("-once", 2e-6)).isInstanceOf(DuplicateKeyException.class);
    }

    @Test
    void partsAreFoundByEveryWordOfNumberMakerAndTechnology() {
        Part part = stored("-found", 1e-6);
        FindParts find = new FindParts(database.jdbc());
        assertThat(find.find(SearchWords.of("polymer " + prefix + " NOTIONAL found"), 5)).extracting(Findable.Found::name).containsExactly(part.partNumber());
        assertThat(find.find(SearchWords.of(prefix + "-found ceramic"), 5)).isEmpty();
        assertThat(find.find(SearchWords.of("found " + prefix + "!"), 5)).isEmpty();
    }

    @Test
    void aWithdrawnPartNamesItsReplacementUntilItIsUsedAgain() {
        Part gone = stored("-old", 1e-6);
        Part next = stored("-next", 2e-6);
        assertThat(parts.changeVetting(gone.id(), gone.version(), Vetting.WITHDRAWN, null, next.id(), AT)).isTrue();
        Part withdrawn = parts.find(gone.id()).orElseThrow();
        assertThat(withdrawn.replacement()).isEqualTo(new Part.Replacement(next.id(), next.partNumber()));
        assertThat(withdrawn.vettingNote()).isEqualTo("replaced by " + next.partNumber());
        assertThat(parts.choices(Set.of(gone.id()))).singleElement().matches(choice -> choice.limit().equals("replaced by " + next.partNumber()));
        assertThat(parts.find(next.id()).orElseThrow().replacement()).isNull();
        assertThat(parts.changeVetting(gone.id(), withdrawn.version(), Vetting.PROPOSED, "made again", null, AT)).isTrue();
        assertThat(parts.find(gone.id()).orElseThrow().vettingNote()).isEqualTo("made again");
    }

    @Test
    void offersForABankWhatHoldsTheTextAndWithdrawnPartsLast() {
        Part first = stored("-offered-1", 1e-6);
        Part second = stored("-offered-2", 2e-6);
        Part gone = stored("-offered-3", 3e-6);
        parts.changeVetting(gone.id(), gone.version(), Vetting.WITHDRAWN, "No longer made", null, AT);
        Part inside = parts.insert(numbered("A" + prefix + "-offered", 4e-6, null), Vetting.PROPOSED, null, librarian, AT);
        PartFilter filter = filter(prefix + "-offered", null, null, null, null, null);
        assertThat(parts.choices(filter, 5)).as("that begin so, others, withdrawn").extracting(PartChoice::id)
                .containsExactly(first.id(), second.id(), inside.id(), gone.id());
        assertThat(parts.choices(filter, 1)).extracting(PartChoice::id).containsExactly(first.id());
        assertThat(parts.choices(Set.of(gone.id()))).singleElement().satisfies(part -> {
            assertThat(part.partNumber()).isEqualTo(gone.partNumber());
            assertThat(part.figures()).contains(Quantity.format(3e-6, "F", 3));
            assertThat(part.limit()).isEqualTo("No longer made");
        });
        PartFilter large = PartSearch.filter(prefix + " offered 1uF");
        assertThat(parts.choices(large, 5)).as("words and figures").extracting(PartChoice::id).containsExactly(first.id());
        assertThat(parts.choices(PartSearch.filter(prefix + " polymer ceramic"), 5)).isEmpty();
        assertThat(parts.choices(Set.of())).isEmpty();
    }

    @Test
    void listsByTextTechnologyValuesAndState() {
        Part small = stored("-A_1", 1e-6);
        Part large = stored("-AX1", 470e-6);
        assertThat(names(filter(prefix + "-a", null, null, null, null, null))).containsExactly(large.partNumber(), small.partNumber());
        assertThat(names(filter(prefix + "-a_1", null, null, null, null, null))).containsExactly(small.partNumber());
        assertThat(names(filter("notional " + prefix, null, 10e-6, null, null, null))).containsExactly(large.partNumber());
        assertThat(names(filter(prefix, null, null, 1e-6, null, null))).containsExactly(small.partNumber());
        assertThat(names(filter(prefix, Technology.FILM, null, null, null, null))).isEmpty();
        assertThat(names(filter(prefix, Technology.POLYMER_ALUMINIUM, null, null, 16.0, Vetting.PROPOSED))).hasSize(2);
        assertThat(names(filter(prefix, null, null, null, 16.1, null))).isEmpty();
        assertThat(names(filter(prefix, null, null, null, null, Vetting.WITHDRAWN))).isEmpty();
    }

    @Test
    void aPageHoldsASliceOfTheList() {
        for (int i = 0; i < 5; i++) {
            stored("-" + i, 1e-6);
        }
        PartFilter ours = filter(prefix, null, null, null, null, null);
        assertThat(parts.count(ours)).isEqualTo(5);
        assertThat(parts.list(ours, 3, 10)).extracting(PartRow::partNumber).containsExactly(prefix + "-3", prefix + "-4");
        assertThat(parts.list(ours, 0, 2)).extracting(PartRow::partNumber).containsExactly(prefix + "-0", prefix + "-1");
    }

    @Test
    void aSweepComesBackToTheLastBit() {
        Part part = stored("-swept", 100e-6);
        double[] awkward = {-0.0, Double.MIN_VALUE, -1.7976931348623157e308, 0.1 + 0.2, 2e23, -1591.5494309189535};
        String raw = rawFiles.keep(new byte[] {1, 2, 3});
        Sweep written = sweeps.insert(part.id(), raw, "x.s1p", sweep(awkward), librarian, AT);
        Sweep read = sweeps.find(written.id()).orElseThrow();
        assertThat(bits(read.document().reactanceOhm())).containsExactly(bits(awkward));
        assertThat(bits(read.document().resistanceOhm())).containsExactly(bits(written.document().resistanceOhm()));
        assertThat(read.provenance()).isEqualTo(written.provenance());
        assertThat(read.document().warnings()).containsExactly("A warning");
        assertThat(read.sha256()).isEqualTo(written.sha256());
        assertThat(read.points()).isEqualTo(6);
        assertThat(parts.list(filter(prefix + "-swept", null, null, null, null, null), 0, 10)).extracting(PartRow::sweeps).containsExactly(1);
    }

    @Test
    void sweepsOfAPartStandInTheOrderOfTheirImport() {
        Part part = stored("-many", 100e-6);
        String raw = rawFiles.keep(prefix.getBytes());
        sweeps.insert(part.id(), raw, "later.csv", sweep(-1), librarian, AT.plusSeconds(1));
        sweeps.insert(part.id(), raw, "b.csv", sweep(-1), librarian, AT);
        sweeps.insert(part.id(), raw, "a.csv", sweep(-1), librarian, AT);
        assertThat(sweeps.ofPart(part.id())).extracting(Sweep::fileName).containsExactly("a.csv", "b.csv", "later.csv");
        assertThat(sweeps.withRaw(raw)).hasSize(3);
    }

    @Test
    void aSweepNeedsItsRawFile() {
        Part part = stored("-rawless", 100e-6);
        assertThatThrownBy(() -> sweeps.insert(part.id(), "no such hash", "x.csv", sweep(-1), librarian, AT))
                .isInstanceOf(DataIntegrityViolationException.class);
    }

    @Test
    void theLargestFileComesBackByteForByte() {
        byte[] bytes = new byte[LARGEST_FILE];
        new Random(prefix.hashCode()).nextBytes(bytes);
        String sha256 = rawFiles.keep(bytes);
        assertThat(Arrays.equals(rawFiles.find(sha256).orElseThrow(), bytes)).isTrue();
        assertThat(database.jdbc().sql("select size_bytes from raw_file where sha256 = :sha256").param("sha256", sha256)
                .query(Long.class).single()).isEqualTo(LARGEST_FILE);
    }

    @Test
    void theSameBytesAreKeptOnceEvenWhenManyBringThem() throws Exception {
        byte[] bytes = ("the same " + prefix).getBytes();
        List<String> keys = AtOnce.times(4, () -> database.transaction().execute(status -> rawFiles.keep(bytes)));
        assertThat(keys).containsOnly(Sha256.of(bytes));
        assertThat(database.jdbc().sql("select count(*) from raw_file where sha256 = :sha256").param("sha256", keys.get(0))
                .query(Integer.class).single()).isEqualTo(1);
        assertThat(rawFiles.find("unknown")).isEmpty();
    }

    private List<String> names(PartFilter filter) {
        return parts.list(filter, 0, 100).stream().map(PartRow::partNumber).toList();
    }

    private static PartFilter filter(String text, Technology technology, Double fromF, Double toF, Double fromV, Vetting vetting) {
        return new PartFilter(text, technology == null ? null : Set.of(technology), fromF, toF, fromV, vetting);
    }

    private static long[] bits(double[] values) {
        return Arrays.stream(values).mapToLong(Double::doubleToRawLongBits).toArray();
    }
}
