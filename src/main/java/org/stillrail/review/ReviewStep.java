package org.stillrail.review;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.stillrail.bank.Bank;
import org.stillrail.bank.BankState;

/** The steps of a bank revision through review, and between which states each leads. There are no others. */
public enum ReviewStep {

    /** An engineer hands the revision in; from here on it is frozen. */
    SUBMITTED("submit", BankState.IN_REVIEW, BankState.IN_WORK),
    /** A reviewer asks for changes, which are made in a new revision. */
    RETURNED("return", BankState.RETURNED, BankState.IN_REVIEW),
    /** The first of two reviewers signs; the revision still waits for the second. */
    SIGNED("sign", BankState.IN_REVIEW, BankState.IN_REVIEW),
    /** A reviewer signs, the last that was asked. */
    APPROVED("approve", BankState.APPROVED, BankState.IN_REVIEW),
    /** A newer revision was approved: this one is no longer the one to build, or no longer waits for it. */
    SUPERSEDED("supersede", BankState.SUPERSEDED, BankState.APPROVED, BankState.IN_REVIEW),
    /** A reviewer takes an approval back. */
    RECALLED("recall", BankState.RECALLED, BankState.APPROVED);

    private final String verb;
    private final BankState to;
    private final Set<BankState> from;

    ReviewStep(String verb, BankState to, BankState from, BankState... orFrom) {
        this.verb = verb;
        this.to = to;
        this.from = EnumSet.of(from, orFrom);
    }

    /** As in 'to submit'. */
    String verb() {
        return verb;
    }

    /** As in 'was submitted'. */
    String done() {
        return name().toLowerCase(Locale.ROOT);
    }

    BankState to() {
        return to;
    }

    boolean leadsFrom(BankState state) {
        return from.contains(state);
    }

    /** What is in the way, as a sentence. */
    String wrongState(Bank bank) {
        String states = from.stream().map(BankState::label).sorted().reduce((a, b) -> a + " or " + b).orElseThrow();
        return "Revision " + bank.revision().number() + " of bank " + bank.name() + " is " + bank.state().label() + "; only a revision that is "
                + states + " can be " + done() + ". Nothing was changed.";
    }
}
