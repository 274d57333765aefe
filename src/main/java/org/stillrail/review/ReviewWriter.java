package org.stillrail.review;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.stillrail.account.CurrentPerson;
import org.stillrail.audit.AuditTrail;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankState;
import org.stillrail.bank.Banks;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.project.Member;
import org.stillrail.project.Projects;

/**
 * Takes the steps, each in one transaction: all of it is stored or none. Every step first waits for whoever else is busy with
 * the bank, then asks {@link ReviewRules} again. Who is signed in does not matter here, so that the demo can tell its story.
 */
@Component
class ReviewWriter {

    private final Banks banks;
    private final Projects projects;
    private final ReviewRules rules;
    private final ReviewRows rows;
    private final Snapshots snapshots;
    private final SnapshotMaker maker;
    private final AuditTrail audit;

    ReviewWriter(
            Banks banks, Projects projects, ReviewRules rules, ReviewRows rows, Snapshots snapshots, SnapshotMaker maker, AuditTrail audit) {
        this.banks = banks;
        this.projects = projects;
        this.rules = rules;
        this.rows = rows;
        this.snapshots = snapshots;
        this.maker = maker;
        this.audit = audit;
    }

    /**
     * @param evaluation of this revision
     * @throws IllegalArgumentException when the concessions do not fit the verdicts
     */
    @Transactional
    public Snapshot submit(
            UUID revisionId, Evaluation evaluation, List<Concession> concessions, String remark, CurrentPerson person, OffsetDateTime at) {
        Bank bank = banks.lock(revisionId);
        rules.require(ReviewStep.SUBMITTED, bank, person);
        return freeze(bank, evaluation, concessions, remark, person, at);
    }

    /** The writing of a submission by whoever may submit; also of one that was overtaken since, which only the demo tells. */
    Snapshot freeze(
            Bank bank, Evaluation evaluation, List<Concession> concessions, String remark, CurrentPerson person, OffsetDateTime at) {
        requireFitting(bank, evaluation, concessions, at);
        Snapshot snapshot = maker.make(bank, evaluation, concessions, remark, person, at);
        take(ReviewStep.SUBMITTED, bank, person, at, remark);
        snapshots.insert(snapshot);
        concessions.forEach(concession -> rows.add(bank.revision().id(), concession));
        record("bank submitted", bank, person, Map.of("snapshot", snapshot.id(), "sha256", snapshot.sha256(), "concessions",
                concessions.stream().map(concession -> concession.requirement().id()).sorted().toList()));
        return snapshot;
    }

    @Transactional
    public void giveBack(UUID revisionId, String remark, CurrentPerson person, OffsetDateTime at) {
        Bank bank = banks.lock(revisionId);
        rules.require(ReviewStep.RETURNED, bank, person);
        take(ReviewStep.RETURNED, bank, person, at, remark);
        record("bank returned", bank, person, Map.of());
    }

    /**
     * Signs; where that is the last signature the project asks for, approves, and supersedes what was approved before or waited beside it.
     *
     * @param sha256 of the snapshot that the signer was shown
     */
    @Transactional
    public Signature approve(UUID revisionId, String sha256, String remark, CurrentPerson person, OffsetDateTime at) {
        Bank bank = banks.lock(revisionId);
        rules.require(ReviewStep.APPROVED, bank, person);
        Snapshot snapshot = snapshots.ofRevision(revisionId).orElseThrow();
        if (!snapshot.intact() || !snapshot.sha256().equals(sha256)) {
            throw new WrongStepException("The stored snapshot is not the one that was shown for signing. Nothing was signed.");
        }
        boolean last = rules.isLastSignature(bank, snapshots.signatures(snapshot.id()).size());
        take(last ? ReviewStep.APPROVED : ReviewStep.SIGNED, bank, person, at, remark);
        Signature signature = Signature.of(snapshot, person, at);
        snapshots.insert(signature);
        if (!last) {
            recordSignature("bank signed", bank, person, snapshot, signature, at);
            return signature;
        }
        supersede(bank, BankState.APPROVED, person, at);
        supersede(bank, BankState.IN_REVIEW, person, at);
        recordSignature("bank approved", bank, person, snapshot, signature, at);
        return signature;
    }

    private void recordSignature(String action, Bank bank, CurrentPerson person, Snapshot snapshot, Signature signature, OffsetDateTime at) {
        record(action, bank, person, Map.of("snapshot", snapshot.id(), "sha256", snapshot.sha256(), "signature", signature.sha256(),
                "signedAt", at.withOffsetSameInstant(ZoneOffset.UTC).toString(), "meaning", signature.meaning()));
    }

    @Transactional
    public void recall(UUID revisionId, String reason, CurrentPerson person, OffsetDateTime at) {
        Bank bank = banks.lock(revisionId);
        rules.require(ReviewStep.RECALLED, bank, person);
        take(ReviewStep.RECALLED, bank, person, at, reason);
        record("bank recalled", bank, person, Map.of());
    }

    @Transactional
    public void comment(UUID revisionId, CommentSubject subject, String remark, CurrentPerson person, OffsetDateTime at) {
        Bank bank = banks.requireRevision(revisionId);
        String about = subject.equals(CommentSubject.WHOLE) ? null : subject.words(bank.document());
        rows.add(new Comment(UUID.randomUUID(), revisionId, person.id(), person.displayName(), at, subject, about, remark));
        record("bank commented", bank, person, Map.of());
    }

    private void supersede(Bank approved, BankState state, CurrentPerson person, OffsetDateTime at) {
        for (Bank older : banks.revisionsAt(approved.id(), state)) {
            if (older.revision().number() < approved.revision().number()) {
                take(ReviewStep.SUPERSEDED, older, person, at, "Revision " + approved.revision().number() + " was approved.");
            }
        }
    }

    private void take(ReviewStep step, Bank bank, CurrentPerson person, OffsetDateTime at, String remark) {
        banks.changeState(bank, bank.state(), step.to());
        rows.add(bank.revision().id(), step, person, at, remark);
    }

    private void requireFitting(Bank bank, Evaluation evaluation, List<Concession> concessions, OffsetDateTime at) {
        List<ConcessionRules.Problem> problems = ConcessionRules.problems(evaluation.verdicts(), concessions,
                at.withOffsetSameInstant(ZoneOffset.UTC).toLocalDate(),
                projects.members(projects.requireRail(bank.railId()).projectId()).stream().map(Member::personId).collect(Collectors.toSet()));
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException("Bank " + bank.name() + " cannot be submitted: "
                    + problems.stream().map(ConcessionRules.Problem::sentence).collect(Collectors.joining("; ")));
        }
    }

    private void record(String action, Bank bank, CurrentPerson person, Map<String, ?> more) {
        Map<String, Object> detail = new LinkedHashMap<>(more);
        detail.put("name", bank.name());
        detail.put("revision", bank.revision().number());
        audit.record(person.userName(), action, "bank", bank.id().toString(), detail);
    }
}
