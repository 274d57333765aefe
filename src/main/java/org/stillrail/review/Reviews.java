package org.stillrail.review;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.stillrail.account.Accounts;
import org.stillrail.account.CurrentPerson;
import org.stillrail.account.May;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankInputs;
import org.stillrail.electrical.evaluation.Evaluation;

/** What people can do with a revision that goes through review. */
@Service
class Reviews {

    private final ReviewWriter writer;
    private final ReviewRules rules;
    private final BankInputs inputs;
    private final Accounts accounts;
    private final Clock clock;

    Reviews(ReviewWriter writer, ReviewRules rules, BankInputs inputs, Accounts accounts, Clock clock) {
        this.writer = writer;
        this.rules = rules;
        this.inputs = inputs;
        this.accounts = accounts;
        this.clock = clock;
    }

    /** @throws org.stillrail.electrical.evaluation.EvaluationRefusedException with a sentence, where the physics refuses the bank */
    Evaluation evaluate(Bank bank) {
        return Evaluation.evaluate(inputs.of(bank.document()));
    }

    @PreAuthorize(May.EDIT_PROJECT)
    public void submit(Bank bank, Evaluation evaluation, List<Concession> concessions, String remark, CurrentPerson person) {
        writer.submit(bank.revision().id(), evaluation, concessions, remark, person, now());
    }

    @PreAuthorize(May.REVIEW)
    public void giveBack(Bank bank, String remark, CurrentPerson person) {
        writer.giveBack(bank.revision().id(), remark, person, now());
    }

    /**
     * Signs. The password is looked at only where the person may sign at all, and before anything is locked.
     *
     * @param sha256 of the snapshot that the person was shown
     * @return false when the password is wrong; then nothing was signed
     */
    @PreAuthorize(May.REVIEW)
    public boolean approve(Bank bank, String sha256, String password, String remark, CurrentPerson person) {
        rules.require(ReviewStep.APPROVED, bank, person);
        if (!accounts.passwordMatches(person, password)) {
            return false;
        }
        writer.approve(bank.revision().id(), sha256, remark, person, now());
        return true;
    }

    @PreAuthorize(May.REVIEW)
    public void recall(Bank bank, String reason, CurrentPerson person) {
        writer.recall(bank.revision().id(), reason, person, now());
    }

    @PreAuthorize(May.COMMENT)
    public void comment(Bank bank, CommentSubject subject, String remark, CurrentPerson person) {
        writer.comment(bank.revision().id(), subject, remark, person, now());
    }

    OffsetDateTime now() {
        return OffsetDateTime.now(clock);
    }
}
