package org.stillrail.electrical.step;

import org.stillrail.electrical.capacitor.Require;

/**
 * Closed forms for the first swing after a load step, before a loop's dynamics matter: the inductor current ramps as steeply as
 * the duty allows from the first instant, and the capacitor makes up the difference. Lower bounds of what a real loop does.
 *
 * <p>Slopes are of the combined inductor current: {@code (inputV - outputV) / L} on loading, {@code outputV / L} on unloading.
 * Sources: the charge balance follows from the two current ramps; attributed to R. Redl, B. P. Erisman, Z. Zansky, 1998 (from
 * memory).
 */
public final class ChargeBalance {

    private ChargeBalance() {
    }

    /**
     * Largest deviation for an instant step into a capacitance with a series resistance: {@code r dI} while {@code r C} is not
     * below the ramp's length {@code dI / m}, else {@code dI^2 / (2 m C) + m r^2 C / 2}.
     *
     * @param stepA      size of the step, positive
     * @param slopeAPerS how fast the inductor follows, positive
     */
    public static double deviationV(double stepA, double slopeAPerS, double capacitanceF, double resistanceOhm) {
        Require.positive("stepA", stepA);
        Require.positive("slopeAPerS", slopeAPerS);
        Require.positive("capacitanceF", capacitanceF);
        Require.notNegative("resistanceOhm", resistanceOhm);
        if (resistanceOhm * capacitanceF >= stepA / slopeAPerS) {
            return resistanceOhm * stepA;
        }
        return stepA * stepA / (2 * slopeAPerS * capacitanceF) + slopeAPerS * resistanceOhm * resistanceOhm * capacitanceF / 2;
    }

    /** The capacitance above which only the resistance decides: {@code dI / (m r)}. */
    public static double criticalCapacitanceF(double stepA, double slopeAPerS, double resistanceOhm) {
        Require.positive("resistanceOhm", resistanceOhm);
        return stepA / (slopeAPerS * resistanceOhm);
    }

    /**
     * Charge that the bank must make up until the currents meet, in C: {@code dI^2/(2 m) - dI^2/(2 k)} for a load edge of slope k
     * that is steeper than the inductor's; 0 for one that is not.
     *
     * @param edgeAPerS the load's slew, positive infinity for an instant step
     */
    public static double chargeC(double stepA, double slopeAPerS, double edgeAPerS) {
        return Math.max(0, stepA * stepA / (2 * slopeAPerS) - stepA * stepA / (2 * edgeAPerS));
    }

    /**
     * Overshoot on unloading without series resistance, the inductor freewheeling into the capacitor: the energy of the current
     * in excess of the new load is conserved, {@code sqrt(Vo^2 + L (I1 - I0)^2 / C) - Vo}.
     *
     * @param inductanceH of all phases in parallel
     */
    public static double energyOvershootV(double inductanceH, double capacitanceF, double outputV, double fromA, double toA) {
        Require.positive("capacitanceF", capacitanceF);
        double excessA = Math.max(0, fromA - toA);
        double added = inductanceH * excessA * excessA / capacitanceF;
        return added / (Math.sqrt(outputV * outputV + added) + outputV);
    }

    /**
     * The least capacitance for an allowed overshoot on unloading, without series resistance: {@code L dI^2 / ((Vo + dV)^2 -
     * Vo^2)}.
     */
    public static double capacitanceForOvershootF(double inductanceH, double outputV, double fromA, double toA, double allowedV) {
        Require.positive("allowedV", allowedV);
        double excessA = Math.max(0, fromA - toA);
        return inductanceH * excessA * excessA / (allowedV * (2 * outputV + allowedV));
    }
}
