package org.stillrail.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.Role;
import org.stillrail.account.StoredPerson;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.project.RailTraits;
import org.stillrail.support.AtOnce;
import org.stillrail.support.TestDatabase;
import org.stillrail.web.SearchWords;

/** Banks, their revisions and where each stands, as they are stored, on either engine. */
abstract class BankRowsSuite {

    private static final OffsetDateTime AT = OffsetDateTime.parse("2031-01-02T03:04:05.123456Z");

    private final TestDatabase database;
    private final JdbcClient jdbc;
    private final BankRows banks;
    private final BankEvidence evidence;
    private final CurrentPerson engineer;

    BankRowsSuite(TestDatabase database) {
        this.database = database;
        this.jdbc = database.jdbc();
        this.banks = new BankRows(jdbc);
        this.evidence = new BankEvidence(jdbc);
        this.engineer = StoredPerson.with(database.jdbc(), Role.ENGINEER);
    }

    private static BranchDocument typed(String label, int count) {
        return new BranchDocument(label, count, null, null, new SeriesRlc(330e-6, 0.03, 5e-9), new SeriesPath(4e-4, 1.5e-9), new SeriesPath(0, 0));
    }

    private static BranchDocument ofPart(UUID partId, UUID partRevisionId) {
        return new BranchDocument("bulk", 2, partId, partRevisionId, null, new SeriesPath(0, 0), new SeriesPath(1e-3, 2e-9));
    }

    private static BankDocument document(BranchDocument... branches) {
        return new BankDocument(null, null, List.of(branches), "Why this mix: \u03a9 and \u00b5");
    }

    private Bank stored(BankDocument document) {
        return banks.insert(null, "Bank " + UUID.randomUUID(), document, engineer, AT);
    }

    /** A part with one revision, in as few columns as banks look at. */
    private UUID[] part() {
        UUID part = UUID.randomUUID();
        UUID revision = UUID.randomUUID();
        database.jdbc().sql("insert into part (id, part_number, maker, vetting, latest_number, version) values (:id, :number, 'm', 'PROPOSED', 1, 0)")
                .param("id", part).param("number", "P-" + part).update();
        database.jdbc().sql("""
                        insert into part_revision (id, subject_id, number, author_id, author, made_at, document, sha256, technology,
                            capacitance_f, rated_voltage_v)
                        values (:id, :part, 1, :author, 'a', :at, '{}', 'x', 'film', 1e-6, 63)""")
                .param("id", revision).param("part", part).param("author", engineer.id()).param("at", AT).update();
        return new UUID[] {part, revision};
    }

    @Test
    void aBankComesBackAsItWasWritten() {
        BankDocument document = document(typed("bulk", 1), typed("ceramics", 12));
        Bank bank = stored(document);
        assertThat(banks.find(bank.id())).contains(bank);
        assertThat(bank.document()).isEqualTo(document);
        assertThat(bank.state()).isEqualTo(BankState.IN_WORK);
        assertThat(bank.isScratch()).isTrue();
        assertThat(bank.ownerId()).isEqualTo(engineer.id());
        assertThat(banks.scratchOf(engineer.id())).contains(bank);
        assertThat(banks.find(UUID.randomUUID())).isEmpty();
    }

    @Test
    void anOlderRevisionStaysReadableWithAStateOfItsOwn() {
        Bank first = stored(document(typed("bulk", 1)));
        assertThat(banks.changeState(first.revision().id(), BankState.IN_WORK, BankState.IN_REVIEW)).isTrue();
        Bank submitted = banks.find(first.id()).orElseThrow();
        assertThat(banks.addRevision(submitted, document(typed("bulk", 2)), engineer, AT.plusDays(1))).isTrue();
        Bank now = banks.find(first.id()).orElseThrow();
        assertThat(now.state()).isEqualTo(BankState.IN_WORK);
        assertThat(now.document().branches().get(0).count()).isEqualTo(2);
        Bank old = banks.find(first.id(), 1).orElseThrow();
        assertThat(old.state()).isEqualTo(BankState.IN_REVIEW);
        assertThat(old.document()).isEqualTo(first.document());
        assertThat(old.isLatest()).isFalse();
        assertThat(banks.history(first.id())).extracting(revision -> revision.number()).containsExactly(2, 1);
    }

    @Test
    void aStaleVersionChangesNothing() {
        Bank seen = stored(document(typed("bulk", 1)));
        assertThat(banks.addRevision(seen, document(typed("mine", 2)), engineer, AT)).isTrue();
        assertThat(banks.addRevision(seen, document(typed("theirs", 3)), engineer, AT)).isFalse();
        assertThat(banks.find(seen.id()).orElseThrow().document().branches().get(0).label()).isEqualTo("mine");
        assertThat(banks.history(seen.id())).hasSize(2);
    }

    @Test
    void ofManyWhoSaveAtOnceExactlyOneWins() throws Exception {
        Bank seen = stored(document(typed("bulk", 1)));
        List<Boolean> won = AtOnce.times(8,
                () -> database.transaction().execute(status -> banks.addRevision(seen, document(typed("bulk", 2)), engineer, AT)));
        assertThat(won).filteredOn(each -> each).hasSize(1);
        Bank now = banks.find(seen.id()).orElseThrow();
        assertThat(now.latestNumber()).isEqualTo(2);
        assertThat(now.version()).isEqualTo(seen.version() + 1);
        assertThat(banks.history(seen.id())).hasSize(2);
    }

    @Test
    void aStateChangesOnlyFromWhereItStood() {
        UUID revision = stored(document(typed("bulk", 1))).revision().id();
        assertThat(banks.changeState(revision, BankState.IN_REVIEW, BankState.APPROVED)).isFalse();
        assertThat(banks.changeState(revision, BankState.IN_WORK, BankState.IN_REVIEW)).isTrue();
        assertThat(banks.changeState(revision, BankState.IN_WORK, BankState.IN_REVIEW)).isFalse();
        assertThat(banks.findRevision(revision).orElseThrow().state()).isEqualTo(BankState.IN_REVIEW);
    }

    @Test
    void ofManyWhoChangeAStateAtOnceExactlyOneWins() throws Exception {
        UUID revision = stored(document(typed("bulk", 1))).revision().id();
        List<Boolean> won = AtOnce.times(8, () -> database.transaction().execute(
                status -> banks.changeState(revision, BankState.IN_WORK, BankState.IN_REVIEW)));
        assertThat(won).filteredOn(each -> each).hasSize(1);
    }

    @Test
    void revisionsAtAStateStandNewestFirst() {
        Bank bank = stored(document(typed("bulk", 1)));
        banks.addRevision(bank, document(typed("bulk", 2)), engineer, AT);
        banks.addRevision(banks.find(bank.id()).orElseThrow(), document(typed("bulk", 3)), engineer, AT);
        banks.changeState(banks.find(bank.id(), 2).orElseThrow().revision().id(), BankState.IN_WORK, BankState.APPROVED);
        assertThat(banks.revisionsAt(bank.id(), BankState.IN_WORK)).extracting(each -> each.revision().number()).containsExactly(3, 1);
        assertThat(banks.revisionsAt(bank.id(), BankState.APPROVED)).extracting(each -> each.revision().number()).containsExactly(2);
    }

    @Test
    void aPartKnowsTheBanksThatHoldItNow() {
        UUID[] part = part();
        Bank bank = stored(document(ofPart(part[0], part[1]), ofPart(part[0], part[1]), typed("bypass", 1)));
        assertThat(evidence.usesOf(part[0])).extracting(BankEvidence.Use::bankId).containsExactly(bank.id());
        banks.addRevision(bank, document(typed("bulk", 1)), engineer, AT);
        assertThat(evidence.usesOf(part[0])).isEmpty();
    }

    @Test
    void anApprovedRevisionCountsAsAUseThoughANewerOneDoesWithoutThePart() {
        UUID[] part = part();
        Bank bank = stored(document(ofPart(part[0], part[1])));
        banks.addRevision(bank, document(typed("bulk", 1)), engineer, AT);
        banks.changeState(bank.revision().id(), BankState.IN_WORK, BankState.APPROVED);
        assertThat(evidence.usesOf(part[0])).extracting(BankEvidence.Use::number).containsExactly(1);
    }

    @Test
    void evidenceChangesWithANewerRevisionAndWithAWithdrawalAfterTheBankWasSaved() {
        UUID[] part = part();
        Bank bank = stored(document(ofPart(part[0], part[1])));
        UUID revision = bank.revision().id();
        assertThat(evidence.changesOf(revision)).isEmpty();
        withdraw(part[0], AT.minusDays(1));
        assertThat(evidence.changesOf(revision)).isEmpty();
        assertThat(evidence.changedOf(List.of(revision))).isEmpty();
        withdraw(part[0], AT.plusDays(1));
        assertThat(evidence.changesOf(revision)).extracting(BankEvidence.ChangedPart::vetting).containsExactly("WITHDRAWN");
        assertThat(evidence.changedOf(List.of(revision, UUID.randomUUID()))).containsExactly(revision);
        UUID[] next = part();
        jdbc.sql("update part set replacement_id = :next where id = :id").param("next", next[0]).param("id", part[0]).update();
        assertThat(evidence.changesOf(revision)).singleElement().matches(change -> change.sentence().endsWith(" is withdrawn; replaced by P-" + next[0] + "."));
        assertThat(evidence.usesOf(part[0])).extracting(BankEvidence.Use::changed).containsExactly(true);
    }

    private void withdraw(UUID partId, OffsetDateTime at) {
        jdbc.sql("update part set vetting = 'WITHDRAWN', vetting_changed_at = :at where id = :id").param("at", at).param("id", partId).update();
    }

    @Test
    void banksAreFoundByNameWhateverTheCaseAndTheSignsInIt() {
        Bank bank = stored(document(typed("bulk", 1)));
        String unique = bank.name().substring(5);
        assertThat(new FindBanks(jdbc).find(SearchWords.of(unique.toUpperCase(Locale.ROOT) + "  bank"), 5)).hasSize(1);
        assertThat(new FindBanks(jdbc).find(SearchWords.of(unique + " other"), 5)).isEmpty();
        assertThat(new FindBanks(jdbc).find(SearchWords.of("_ %"), 5)).isEmpty();
    }

    @Test
    void priorDesignsAreReadWithAllFilters() {
        PriorDesigns designs = new PriorDesigns(jdbc);
        PriorDesigns.Filter filter = new PriorDesigns.Filter(Technology.FILM, "%no such project%", 2.0, UUID.randomUUID());
        assertThat(designs.near(new RailTraits(3.3, 5, 500e3, null), filter, 5)).isEmpty();
        assertThat(designs.phrases(List.of(UUID.randomUUID()))).isEmpty();
        assertThat(evidence.changedOf(List.of())).isEmpty();
    }

    @Test
    void theBanksOfARailAreAskedForWithWhatChangedBelow() {
        assertThat(new BanksOfRails(jdbc).of(List.of(UUID.randomUUID()))).isEmpty();
    }
}
