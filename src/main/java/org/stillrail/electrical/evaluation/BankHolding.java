package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.List;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.spread.BranchCorner;
import org.stillrail.electrical.stress.BankCharge;
import org.stillrail.electrical.stress.BiasCharge;

/** What the parts of a bank hold over the voltage across them, each at its place in a corner, and the fixed capacitance of the load. */
final class BankHolding {

    private BankHolding() {
    }

    static BankCharge of(EvaluationInput input, Corner corner) {
        List<BiasCharge> branches = new ArrayList<>();
        for (int k = 0; k < input.branches().size(); k++) {
            BranchInput branch = input.branches().get(k);
            BranchCorner place = corner.conditions().branches().get(k);
            OperatingPoint unbiased = new OperatingPoint(0, place.point().temperatureC(), place.point().ageHours());
            branches.add(new BiasCharge(branch.count(), branch.part().at(unbiased, place.place()).capacitanceF(),
                    branch.part().characteristics().overBias()));
        }
        if (input.distance() != null && input.distance().load() != null) {
            branches.add(new BiasCharge(1, input.distance().load().capacitanceF(), null));
        }
        return new BankCharge(branches);
    }
}
