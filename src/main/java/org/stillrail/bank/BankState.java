package org.stillrail.bank;

/** Where a bank revision stands. */
public enum BankState {

    /** May be submitted, or left behind by a newer revision. */
    IN_WORK("in work"),
    /** Waits for a reviewer. */
    IN_REVIEW("in review"),
    /** A reviewer asked for changes; work goes on in a new revision. */
    RETURNED("returned"),
    /** Signed; the one to build from. */
    APPROVED("approved"),
    /** A newer revision was approved. */
    SUPERSEDED("superseded"),
    /** Taken back after approval, with a reason. */
    RECALLED("recalled");

    private final String label;

    BankState(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
