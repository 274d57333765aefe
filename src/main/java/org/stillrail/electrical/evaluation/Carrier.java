package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.BankResponse;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Node;

/**
 * The branch that carries most of the current at one frequency.
 *
 * @param index in the bank
 * @param share |Ibranch / Itotal|, which may exceed 1
 */
record Carrier(int index, String name, double share) {

    /** Of a current at the load. */
    static Carrier at(Bank bank, double hz) {
        return at(bank.response(Node.LOAD, Node.LOAD), hz);
    }

    /** Of the converter's current. */
    static Carrier ofConverter(Bank bank, double hz) {
        return at(bank.response(Node.CONVERTER, Node.LOAD), hz);
    }

    private static Carrier at(BankResponse response, double hz) {
        int best = 0;
        double largest = -1;
        for (int k = 0; k < response.branches().size(); k++) {
            double share = response.share(k, hz);
            if (share > largest) {
                largest = share;
                best = k;
            }
        }
        return new Carrier(best, name(response.branches().get(best)), largest);
    }

    /** |Ibranch / Itotal| of one branch, of a current at the load. */
    static double share(Bank bank, int index, double hz) {
        return bank.response(Node.LOAD, Node.LOAD).share(index, hz);
    }

    static String name(Bank bank, int index) {
        return name(bank.branches().get(index));
    }

    private static String name(Branch branch) {
        return "'" + branch.label() + "'";
    }
}
