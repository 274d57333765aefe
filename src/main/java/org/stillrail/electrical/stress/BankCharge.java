package org.stillrail.electrical.stress;

import java.util.List;
import java.util.TreeSet;
import org.stillrail.electrical.capacitor.CharacteristicCurve;

/** What a whole bank holds at a voltage: the sum over its branches. */
public record BankCharge(List<BiasCharge> branches) {

    public BankCharge {
        branches = List.copyOf(branches);
        if (branches.isEmpty()) {
            throw new IllegalArgumentException("A bank needs at least one branch");
        }
    }

    public double capacitanceF(double v) {
        return branches.stream().mapToDouble(branch -> branch.capacitanceF(v)).sum();
    }

    public double chargeC(double v) {
        return branches.stream().mapToDouble(branch -> branch.chargeC(v)).sum();
    }

    public double energyJ(double v) {
        return branches.stream().mapToDouble(branch -> branch.energyJ(v)).sum();
    }

    double bleedF(double fromV, double toV) {
        return branches.stream().mapToDouble(branch -> branch.bleedF(fromV, toV)).sum();
    }

    /** The voltage from 0 to {@code v} at which the bank's capacitance is largest. */
    double voltageOfLargestCapacitance(double v) {
        TreeSet<Double> candidates = new TreeSet<>(List.of(0.0, v));
        for (BiasCharge branch : branches) {
            if (branch.overBias() != null) {
                branch.overBias().points().stream().map(CharacteristicCurve.Point::x).filter(x -> x > 0 && x < v).forEach(candidates::add);
            }
        }
        double at = 0;
        for (double candidate : candidates) {
            if (capacitanceF(candidate) > capacitanceF(at)) {
                at = candidate;
            }
        }
        return at;
    }
}
