package org.stillrail.electrical.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.stillrail.electrical.capacitor.Band;
import org.stillrail.electrical.capacitor.OperatingPoint;
import org.stillrail.electrical.capacitor.PlaceInBand;

/** A corner as places on its axes, before figures are put in. */
record Conditions(
        String name, IntFunction<Axis> capacitance, Axis resistance, Axis warmth, boolean old, Axis input, Axis inductance, Axis switching,
        Axis reference) {

    static Conditions nominal(String name) {
        return new Conditions(
                name, k -> Axis.NOMINAL, Axis.NOMINAL, Axis.NOMINAL, false, Axis.NOMINAL, Axis.NOMINAL, Axis.NOMINAL, Axis.NOMINAL);
    }

    Conditions allCapacitances(Axis axis) {
        return capacitances(k -> axis);
    }

    Conditions capacitances(IntFunction<Axis> axes) {
        return new Conditions(name, axes, resistance, warmth, old, input, inductance, switching, reference);
    }

    Conditions resistance(Axis axis) {
        return new Conditions(name, capacitance, axis, warmth, old, input, inductance, switching, reference);
    }

    Conditions warmth(Axis axis) {
        return new Conditions(name, capacitance, resistance, axis, old, input, inductance, switching, reference);
    }

    Conditions grownOld() {
        return new Conditions(name, capacitance, resistance, warmth, true, input, inductance, switching, reference);
    }

    Conditions input(Axis axis) {
        return new Conditions(name, capacitance, resistance, warmth, old, axis, inductance, switching, reference);
    }

    Conditions inductance(Axis axis) {
        return new Conditions(name, capacitance, resistance, warmth, old, input, axis, switching, reference);
    }

    Conditions switching(Axis axis) {
        return new Conditions(name, capacitance, resistance, warmth, old, input, inductance, axis, reference);
    }

    Conditions reference(Axis axis) {
        return new Conditions(name, capacitance, resistance, warmth, old, input, inductance, switching, axis);
    }

    SpreadCorner corner(RailSpread rail, List<BranchSpread> spreads) {
        double ambientC = warmth.of(rail.ambientMinimumC(), rail.ambientNominalC(), rail.ambientMaximumC());
        double outputV = rail.nominalV() * (1 + reference.of(-1, 0, 1) * rail.referenceShare());
        List<BranchCorner> branches = new ArrayList<>();
        for (int k = 0; k < spreads.size(); k++) {
            branches.add(branch(spreads.get(k), capacitance.apply(k), ambientC, outputV));
        }
        double inductanceFactor = inductance.of(
                (1 - rail.inductanceShare()) * rail.saturationShare(), 1, 1 + rail.inductanceShare());
        return new SpreadCorner(name, branches, inductanceFactor, 1 + switching.of(-1, 0, 1) * rail.switchingShare(), outputV,
                input.of(rail.inputMinimumV(), rail.inputNominalV(), rail.inputMaximumV()), ambientC);
    }

    private BranchCorner branch(BranchSpread spread, Axis capacitanceAxis, double ambientC, double outputV) {
        Double deviation = capacitanceAxis == Axis.NOMINAL || spread.leastDeviation() == null ? null
                : (Double) capacitanceAxis.of(spread.leastDeviation(), 0, spread.mostDeviation());
        double resistanceFactor = resistance.of(orOne(spread.leastResistance()), 1, orOne(spread.mostResistance()));
        Band.Bound change = switch (capacitanceAxis) {
            case LOW -> Band.Bound.LEAST;
            case NOMINAL -> Band.Bound.TYPICAL;
            case HIGH -> Band.Bound.MOST;
        };
        return new BranchCorner(
                new OperatingPoint(outputV, ambientC, old ? spread.oldHours() : null),
                new PlaceInBand(deviation, resistanceFactor, change, old));
    }

    private static double orOne(Double factor) {
        return factor == null ? 1 : factor;
    }
}
