package org.stillrail.bank;

import java.util.List;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.library.Part;

/** Works out what the newest revision of a part does to a bank that was saved with an older one. Stores nothing. */
@Component
class PartEffects {

    private final Banks banks;
    private final BankInputs inputs;

    PartEffects(Banks banks, BankInputs inputs) {
        this.banks = banks;
        this.inputs = inputs;
    }

    /**
     * The effect on one bank revision.
     *
     * @param claimBefore what is said of the bank as it was saved
     * @param claimAfter  likewise with the part's newest revision; both null where the physics refuses
     * @param turns       verdicts that differ
     * @param refused     why there are no verdicts, or null
     */
    record Effect(BankEvidence.Use use, String claimBefore, String claimAfter, List<VerdictTurn> turns, String refused) {

        public long turned() {
            return turns.stream().filter(VerdictTurn::turned).count();
        }
    }

    Effect of(BankEvidence.Use use, Part newest) {
        BankDocument document = banks.requireRevision(use.revisionId()).document();
        try {
            Evaluation before = Evaluation.evaluate(inputs.of(document));
            Evaluation after = Evaluation.evaluate(inputs.of(document.withPartRevision(newest.id(), newest.revision().id())));
            return new Effect(use, before.claim().sentence(), after.claim().sentence(), VerdictTurn.between(before, after), null);
        } catch (IllegalArgumentException e) {
            return new Effect(use, null, null, List.of(), e.getMessage() + ".");
        }
    }
}
