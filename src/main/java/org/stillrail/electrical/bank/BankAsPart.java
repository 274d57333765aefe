package org.stillrail.electrical.bank;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/** A whole bank taken as one part, so that it can stand at the far end of a path as a branch of another bank. */
record BankAsPart(Bank bank) implements ImpedanceModel {

    BankAsPart {
        Objects.requireNonNull(bank, "bank");
    }

    @Override
    public void addImpedanceTo(FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm) {
        Curve z = bank.on(grid).bank();
        for (int i = 0; i < resistanceOhm.length; i++) {
            resistanceOhm[i] += z.real(i);
            reactanceOhm[i] += z.imaginary(i);
        }
    }

    @Override
    public ImpedancePoint at(double hz) {
        return bank.at(hz);
    }

    @Override
    public double inductanceAtInfinityH() {
        return bank.inductanceAtInfinityH();
    }

    @Override
    public double[] knotsHz() {
        return Arrays.stream(bank.knotsHz()).sorted().distinct().toArray();
    }

    @Override
    public ValidRange validRange() {
        return bank.validRange();
    }

    @Override
    public List<String> warnings() {
        List<String> found = new ArrayList<>();
        bank.branches().forEach(branch -> branch.part().warnings()
                .forEach(warning -> found.add("Branch '" + branch.label() + "': " + warning)));
        return found;
    }
}
