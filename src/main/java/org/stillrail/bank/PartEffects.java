package org.stillrail.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.stillrail.electrical.evaluation.Evaluation;
import org.stillrail.library.Library;
import org.stillrail.library.Part;
import org.stillrail.library.Vetting;

/**
 * Works out what a part of today does to a bank that was saved before: its newest revision takes the place of the older one, and
 * a withdrawn part gives way to the other parts that the branch allows, and where it allows none to its replacement. Stores nothing.
 */
@Component
class PartEffects {

    private final Banks banks;
    private final BankInputs inputs;
    private final Library library;

    PartEffects(Banks banks, BankInputs inputs, Library library) {
        this.library = library;
        this.banks = banks;
        this.inputs = inputs;
    }

    /**
     * The effect on one bank revision.
     *
     * @param places      where the part stands in the bank, a sentence for each branch
     * @param claimBefore what is said of the bank as it was saved
     * @param claimAfter  likewise with the part of today; both null where the physics refuses
     * @param turns       verdicts that differ
     * @param refused     why there are no verdicts, or null
     */
    record Effect(BankEvidence.Use use, List<String> places, String claimBefore, String claimAfter, List<VerdictTurn> turns, String refused) {

        public long turned() {
            return turns.stream().filter(VerdictTurn::turned).count();
        }
    }

    Effect of(BankEvidence.Use use, Part newest) {
        Bank bank = banks.requireRevision(use.revisionId());
        BankDocument document = bank.document();
        boolean withdrawn = newest.vetting() == Vetting.WITHDRAWN;
        BranchDocument.Alternate replacement = withdrawn
                ? library.replacementOf(newest).map(part -> new BranchDocument.Alternate(part.id(), part.revision().id())).orElse(null) : null;
        List<String> places = places(document, newest.id(), withdrawn, replacement);
        try {
            Evaluation before = Evaluation.evaluate(inputs.ofRecord(bank).input());
            BankDocument left = withdrawn ? document.without(newest.id(), replacement) : document;
            Evaluation after = Evaluation.evaluate(inputs.of(left.withPartRevision(newest.id(), newest.revision().id())));
            return new Effect(use, places, before.claim().sentence(), after.claim().sentence(), VerdictTurn.between(before, after), null);
        } catch (IllegalArgumentException e) {
            return new Effect(use, places, null, null, List.of(), e.getMessage() + ".");
        }
    }

    private List<String> places(BankDocument document, UUID partId, boolean withdrawn, BranchDocument.Alternate replacement) {
        List<String> places = new ArrayList<>();
        for (BranchDocument branch : document.branches()) {
            if (branch.hasAlternate(partId)) {
                places.add("An alternate in branch '" + branch.label() + "'" + (withdrawn ? ": after, it is not fitted there." : "."));
            } else if (partId.equals(branch.partId())) {
                places.add("The part of branch '" + branch.label() + "'" + (withdrawn ? ": " + instead(branch, replacement) : "."));
            }
        }
        return places;
    }

    /** What stands in the place of a branch's withdrawn part. */
    private String instead(BranchDocument branch, BranchDocument.Alternate replacement) {
        BranchDocument left = branch.without(branch.partId(), replacement);
        if (left == branch) {
            return "no other part may be fitted there, so after is worked out with it still.";
        }
        String number = library.findRevision(left.partRevisionId()).orElseThrow().partNumber();
        return branch.alternates() == null ? "no alternate is named; after, its replacement " + number + " takes the place, mounted alike."
                : "after, its alternate " + number + " takes the place.";
    }
}
