package org.stillrail.electrical.evaluation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleFunction;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.ripple.HarmonicCurrents;
import org.stillrail.electrical.ripple.PartCurrents;
import org.stillrail.electrical.ripple.PeriodicCurrent;
import org.stillrail.electrical.spread.BranchCorner;
import org.stillrail.electrical.stress.PartConditions;
import org.stillrail.electrical.stress.PartStress;

/** What one part of each branch goes through at a corner. */
final class CornerStress {

    /** With its own heat, a part is followed until it is as warm as its heat makes it, within this. */
    private static final double CLOSE_K = 0.05;
    private static final int MOST_ROUNDS = 8;

    private CornerStress() {
    }

    /**
     * In the bank's order; null for figures that were typed in, of which no technology is known.
     *
     * @param bank of {@code corner}, or with another count
     * @return null for a flyback of unknown turns
     */
    static Tried<List<PartStress>> of(EvaluationInput input, Corner corner, Bank bank) {
        RailFigures rail = input.rail();
        Tried<PeriodicCurrent> current = Tried.of(() -> corner.current(rail));
        if (current.answered() && current.value() == null) {
            return null;
        }
        return current.then(flowing -> {
            List<HarmonicCurrents> currents = PartCurrents.of(bank, flowing);
            List<PartStress> parts = new ArrayList<>();
            for (int k = 0; k < currents.size(); k++) {
                parts.add(part(input, corner, k, currents.get(k), flowing.frequencyHz()));
            }
            return Collections.unmodifiableList(parts);
        });
    }

    private static PartStress part(EvaluationInput input, Corner corner, int index, HarmonicCurrents currents, double fundamentalHz) {
        BranchInput branch = input.branches().get(index);
        if (branch.technology() == null) {
            return null;
        }
        ImpedanceModel asItIs = corner.parts().get(index).model();
        DoubleFunction<ImpedanceModel> partAtC = branch.part().followsTemperature()
                ? temperatureC -> at(branch, corner.conditions().branches().get(index), temperatureC) : temperatureC -> asItIs;
        return PartStress.of(branch.ratings().of(branch.technology(), branch.ratedVoltageV()), input.settings().stressRules(),
                new PartConditions(corner.conditions().ambientC(), corner.conditions().outputV(), corner.conditions().outputV(), currents,
                        fundamentalHz, partAtC));
    }

    private static ImpedanceModel at(BranchInput branch, BranchCorner place, double temperatureC) {
        OperatingPoint point = place.point();
        return branch.part().at(new OperatingPoint(point.biasV(), temperatureC, point.ageHours()), place.place()).model();
    }

    /**
     * The corner with its parts as warm as their own losses make them, where warmth changes them. The currents shift with that, so it
     * is gone through until no part moves by more than {@value #CLOSE_K} K. A part that runs away stays at the temperature of the air.
     *
     * @param cold with all parts at the temperature of the air
     */
    static Corner warmed(Corner cold, Fitting fitting) {
        EvaluationInput input = fitting.input();
        if (input.branches().stream().noneMatch(branch -> branch.part().followsTemperature())) {
            return cold;
        }
        Corner corner = cold;
        double[] riseK = new double[input.branches().size()];
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Tried<List<PartStress>> stress = of(input, corner, corner.bank());
            if (stress == null || !stress.answered()) {
                return corner;
            }
            double moved = 0;
            for (int k = 0; k < riseK.length; k++) {
                double now = input.branches().get(k).part().followsTemperature() ? riseK(stress.value().get(k)) : 0;
                moved = Math.max(moved, Math.abs(now - riseK[k]));
                riseK[k] = now;
            }
            if (moved <= CLOSE_K) {
                return corner;
            }
            corner = Corner.bent(cold.conditions().withOwnHeat(riseK), fitting);
        }
        return corner;
    }

    private static double riseK(PartStress stress) {
        return stress == null || stress.heat() == null || stress.heat().runsAway() ? 0 : stress.heat().riseK();
    }
}
