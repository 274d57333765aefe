package org.stillrail.electrical.spread;

import java.util.Objects;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.Require;

/**
 * A branch whose parts stray at random.
 *
 * @param branch       with the nominal part at its operating point
 * @param capacitanceF series capacitance of one nominal part, what the tolerance refers to
 * @param capacitance  of that
 * @param resistance   of the part's ESR, at {@code resistanceHz}
 * @param resistanceHz where the ESR is stated
 */
public record RandomBranch(Branch branch, double capacitanceF, Tolerance capacitance, Tolerance resistance, double resistanceHz) {

    public RandomBranch {
        Objects.requireNonNull(branch, "branch");
        Require.positive("capacitanceF", capacitanceF);
        Objects.requireNonNull(capacitance, "capacitance");
        Objects.requireNonNull(resistance, "resistance");
        Require.positive("resistanceHz", resistanceHz);
    }
}
