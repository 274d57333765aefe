package org.stillrail.bank.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.audit.AuditTrail;
import org.stillrail.bank.Bank;
import org.stillrail.bank.Banks;
import org.stillrail.bank.BenchKind;
import org.stillrail.bank.BranchDocument;
import org.stillrail.bank.MountingOrigin;
import org.stillrail.document.Sha256;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.bench.MountingFit;
import org.stillrail.library.SweepIntake;
import org.stillrail.web.NotFoundException;

/** What can be done with records of the bench. */
@Service
class Bench {

    /** More digits of a fitted mounting than its error allows would be a pretence. */
    private static final int DIGITS = 3;

    private final BenchRecords records;
    private final Banks banks;
    private final SweepIntake intake;
    private final AuditTrail audit;
    private final Clock clock;

    Bench(BenchRecords records, Banks banks, SweepIntake intake, AuditTrail audit, Clock clock) {
        this.records = records;
        this.banks = banks;
        this.intake = intake;
        this.audit = audit;
        this.clock = clock;
    }

    List<BenchRecord> of(Bank bank) {
        return records.ofRevision(bank.revision().id());
    }

    BenchRecord require(Bank bank, UUID recordId) {
        return records.find(recordId).filter(record -> record.revisionId().equals(bank.revision().id()))
                .orElseThrow(() -> new NotFoundException("This revision has no such record of the bench."));
    }

    /** A record of this revision from the same bytes. */
    Optional<BenchRecord> sameBytes(Bank bank, byte[] bytes) {
        String sha256 = Sha256.of(bytes);
        return of(bank).stream().filter(record -> record.rawSha256().equals(sha256)).findFirst();
    }

    /**
     * Keeps the raw bytes and what was read from them.
     *
     * @throws org.springframework.security.access.AccessDeniedException for whoever may not change the bank
     */
    @PreAuthorize(May.SCRATCH)
    @Transactional
    public BenchRecord attach(Bank bank, BenchKind kind, SweepIntake.SentFile file, BenchDocument document, CurrentPerson author) {
        banks.requireEditor(bank, author);
        String sha256 = intake.keepRaw(file.bytes());
        BenchRecord record = new BenchRecord(UUID.randomUUID(), bank.revision().id(), kind, sha256, file.fileName(), author.displayName(),
                OffsetDateTime.now(clock), document);
        records.insert(record, author);
        audit.record(author.userName(), "bench record attached", "bank", bank.id().toString(),
                Map.of("bank", bank.name(), "revision", bank.revision().number(), "kind", kind.label(), "file", file.fileName(), "sha256", sha256));
        return record;
    }

    /** The next revision of the bank, with the mountings that were found. @throws org.stillrail.web.StaleVersionException as a save does */
    Bank writeBack(Bank bank, long version, MountingFit fit, BenchRecord record, CurrentPerson author) {
        List<BranchDocument> branches = new ArrayList<>();
        for (int k = 0; k < bank.document().branches().size(); k++) {
            BranchDocument branch = bank.document().branches().get(k);
            SeriesPath found = fit.mountings().get(k).after();
            branches.add(branch.withMounting(new SeriesPath(rounded(found.resistanceOhm()), rounded(found.inductanceH())),
                    MountingOrigin.fitted(record.fileName())));
        }
        String note = (bank.document().note() == null ? "" : bank.document().note() + "\n") + "Mountings fitted to " + record.fileName() + ".";
        return banks.save(bank.id(), version, bank.document().withBranches(bank.document().railRevisionId(), branches, note), author);
    }

    private static double rounded(double value) {
        return value == 0 ? 0 : new BigDecimal(value).round(new MathContext(DIGITS)).doubleValue();
    }
}
