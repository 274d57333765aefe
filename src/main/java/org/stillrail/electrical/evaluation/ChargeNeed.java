package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.converter.PowerStage;
import org.stillrail.electrical.requirement.LoadStep;

/**
 * The capacitance that covers the charge which the inductor is late with, within the allowed deviation.
 *
 * <pre>
 * Q = dI^2 / (2 m) - dI^2 / (2 slew), 0 where the load is slower than the inductor      C = Q / dV
 * m = (Vin - Vout) / L on loading, Vout / L on unloading
 * </pre>
 *
 * Derived as the area between the two ramps. The converter reacts at once and with full duty: no loop can need less. The
 * output voltage is taken as constant, so on unloading C is slightly on the safe side.
 *
 * @param loading whether the charge is missing on loading rather than in excess on unloading
 */
record ChargeNeed(double chargeC, double capacitanceF, boolean loading) {

    /** The larger need of the step and its way back. */
    static ChargeNeed of(PowerStage stage, LoadStep step) {
        ChargeNeed loading = of(step, stage.steepestRiseAPerS(), true);
        ChargeNeed unloading = of(step, stage.steepestFallAPerS(), false);
        return loading.chargeC > unloading.chargeC ? loading : unloading;
    }

    static ChargeNeed of(LoadStep step, double inductorAPerS, boolean loading) {
        double square = (step.toA() - step.fromA()) * (step.toA() - step.fromA());
        double charge = Math.max(0, square / (2 * inductorAPerS) - square / (2 * step.slewAPerS()));
        return new ChargeNeed(charge, charge / step.allowedDeviationV(), loading);
    }

    /**
     * What the branches hold together, and a fixed load capacitance: each by its reactance at one frequency, less the inductance that it has at high
     * frequency, {@code 1 / (w (w L - X))}. Exact for series R-L-C; ESR is left to the deviation verdict.
     */
    static double capacitanceF(Bank bank, double hz) {
        double sum = 0;
        for (Branch branch : bank.branches()) {
            sum += capacitanceF(branch, hz);
        }
        return bank.distance() == null || bank.distance().load() == null ? sum : sum + bank.distance().load().capacitanceF();
    }

    static double capacitanceF(Branch branch, double hz) {
        double omega = 2 * Math.PI * hz;
        ImpedancePoint z = branch.at(hz);
        double capacitive = omega * branch.inductanceAtInfinityH() - z.reactanceOhm();
        return capacitive > 0 ? 1 / (omega * capacitive) : 0;
    }
}
