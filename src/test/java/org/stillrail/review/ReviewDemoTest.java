package org.stillrail.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankState;
import org.stillrail.bank.Banks;
import org.stillrail.document.CanonicalJson;
import org.stillrail.electrical.requirement.Requirement;
import org.stillrail.support.DemoTest;

/** What the demo's reviews left behind. */
@DemoTest
class ReviewDemoTest {

    @Autowired
    private Banks banks;
    @Autowired
    private Snapshots snapshots;
    @Autowired
    private Timeline timeline;
    @Autowired
    private JdbcClient jdbc;

    private List<Bank> submitted() {
        return jdbc.sql("select revision_id from review_snapshot").query(UUID.class).list().stream().map(banks::requireRevision).toList();
    }

    @Test
    void everyStateOccurs() {
        Set<BankState> found = jdbc.sql("select distinct state from bank_revision_state").query(String.class).list().stream()
                .map(BankState::valueOf).collect(Collectors.toSet());
        assertThat(found).containsExactlyInAnyOrder(BankState.values());
    }

    @Test
    void everySnapshotIsIntactAndComesOutTheSame() {
        assertThat(submitted()).hasSizeGreaterThanOrEqualTo(10).allSatisfy(bank -> {
            Snapshot snapshot = snapshots.ofRevision(bank.revision().id()).orElseThrow();
            assertThat(snapshot.intact()).isTrue();
            SnapshotDocument document = CanonicalJson.read(
                    new String(snapshot.content().copy(), StandardCharsets.UTF_8), SnapshotDocument.class);
            assertThat(Recomputation.of(document)).as(bank.name()).matches(Recomputation::same);
            assertThat(document.bank().sha256()).isEqualTo(bank.revision().sha256());
            assertThat(document.parts()).isNotEmpty();
        });
    }

    @Test
    void approvalsAreSignedBySomebodyElseAndOthersAreNotSigned() {
        Set<BankState> signed = Set.of(BankState.APPROVED, BankState.SUPERSEDED, BankState.RECALLED);
        assertThat(submitted()).allSatisfy(bank -> {
            Snapshot snapshot = snapshots.ofRevision(bank.revision().id()).orElseThrow();
            List<Signature> signatures = snapshots.signatures(snapshot.id());
            assertThat(signatures).hasSize(signed.contains(bank.state()) ? 1 : 0).allSatisfy(signature -> {
                assertThat(signature.intact() && signature.isFor(snapshot)).isTrue();
                assertThat(signature.signerId()).isNotEqualTo(bank.revision().authorId());
            });
        });
    }

    @Test
    void oneApprovedBankStandsOnAConcession() {
        assertThat(submitted()).filteredOn(bank -> bank.state() == BankState.APPROVED && !concessions(bank).isEmpty())
                .singleElement().satisfies(bank -> assertThat(concessions(bank)).containsExactly(Requirement.DEVIATION.name()));
    }

    @Test
    void stepsStandOnTheDaysOfTheStory() {
        Bank superseded = submitted().stream().filter(bank -> bank.state() == BankState.SUPERSEDED).findFirst().orElseThrow();
        assertThat(timeline.of(superseded)).extracting(entry -> entry.at().toLocalDate().toString())
                .containsExactly("2026-03-12", "2026-03-13", "2026-05-04", "2026-05-06", "2026-05-06");
        assertThat(timeline.of(superseded)).extracting(TimelineEntry::sentence).last().asString().contains("revision 1 is superseded");
    }

    private List<String> concessions(Bank bank) {
        return jdbc.sql("select requirement from concession where revision_id = :id").param("id", bank.revision().id())
                .query(String.class).list();
    }
}
