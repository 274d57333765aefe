package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.capacitor.ImpedancePoint;

/**
 * The branch that carries most of the current at one frequency.
 *
 * @param index in the bank
 * @param share |Ibranch / Itotal|, which may exceed 1
 */
record Carrier(int index, String name, double share) {

    static Carrier at(Bank bank, double hz) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < bank.branches().size(); k++) {
            ImpedancePoint z = bank.branches().get(k).at(hz);
            if (z.squaredMagnitude() < least) {
                least = z.squaredMagnitude();
                best = k;
            }
        }
        return new Carrier(best, name(bank, best), Math.sqrt(bank.at(hz).squaredMagnitude() / least));
    }

    /** |Ibranch / Itotal| of one branch. */
    static double share(Bank bank, int index, double hz) {
        return Math.sqrt(bank.at(hz).squaredMagnitude() / bank.branches().get(index).at(hz).squaredMagnitude());
    }

    /** The branch with the least |Z| among the inductive ones at a frequency (or the capacitive ones), null where there is none. */
    static Integer strongest(Bank bank, double hz, boolean inductive) {
        Integer strongest = null;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < bank.branches().size(); k++) {
            ImpedancePoint z = bank.branches().get(k).at(hz);
            boolean fits = inductive ? z.reactanceOhm() > 0 : z.reactanceOhm() < 0;
            if (fits && z.squaredMagnitude() < least) {
                least = z.squaredMagnitude();
                strongest = k;
            }
        }
        return strongest;
    }

    static String name(Bank bank, int index) {
        return "'" + bank.branches().get(index).label() + "'";
    }
}
