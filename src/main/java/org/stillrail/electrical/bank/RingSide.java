package org.stillrail.electrical.bank;

/**
 * One of the two that ring against each other: a branch, or the fixed capacitance of the load.
 *
 * @param branch index in the bank, null for the load's capacitance
 */
public record RingSide(Integer branch) {

    public static final RingSide LOAD = new RingSide(null);

    public boolean isLoad() {
        return branch == null;
    }

    public String label(Bank bank) {
        return isLoad() ? Bank.LOAD : bank.branches().get(branch).label();
    }

    /** For a sentence: the label of a branch in quotes. */
    public String name(Bank bank) {
        return isLoad() ? Bank.LOAD : "'" + label(bank) + "'";
    }
}
