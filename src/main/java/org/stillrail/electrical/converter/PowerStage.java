package org.stillrail.electrical.converter;

import org.stillrail.electrical.capacitor.Require;

/**
 * A buck converter's power stage. Inductance and resistance are of each phase; seen from the output, equal phases act as
 * one inductor of {@code 1 / phases} of both.
 *
 * @param inputV                 positive, above {@code outputV}
 * @param outputV                the set-point, positive
 * @param inductanceH            of each phase, positive
 * @param inductorResistanceOhm  of each phase with what is in series with it, zero or positive
 * @param switchingHz            of each phase, positive
 * @param phases                 1 or more
 */
public record PowerStage(
        double inputV, double outputV, double inductanceH, double inductorResistanceOhm, double switchingHz, int phases) {

    public PowerStage {
        Require.positive("inputV", inputV);
        Require.positive("outputV", outputV);
        Require.positive("inductanceH", inductanceH);
        Require.notNegative("inductorResistanceOhm", inductorResistanceOhm);
        Require.positive("switchingHz", switchingHz);
        if (phases < 1) {
            throw new IllegalArgumentException("phases must be 1 or more, not " + phases);
        }
        if (outputV >= inputV) {
            throw new IllegalArgumentException("outputV must be below inputV: a buck cannot make " + outputV
                    + " V from " + inputV + " V");
        }
    }

    PowerStage withInductanceTimes(double factor) {
        return new PowerStage(inputV, outputV, inductanceH * factor, inductorResistanceOhm, switchingHz, phases);
    }

    /** Inductance of all phases in parallel, in H. */
    public double combinedInductanceH() {
        return inductanceH / phases;
    }

    /** Resistance of all phases in parallel, in ohm. */
    public double combinedResistanceOhm() {
        return inductorResistanceOhm / phases;
    }

    /** Ideal duty, {@code outputV / inputV}. */
    public double duty() {
        return outputV / inputV;
    }

    /** The steepest rise of the combined inductor current at the set-point, {@code (inputV - outputV) / L}, in A/s. */
    public double steepestRiseAPerS() {
        return (inputV - outputV) / combinedInductanceH();
    }

    /** The steepest fall of the combined inductor current at the set-point, {@code outputV / L}, in A/s, positive. */
    public double steepestFallAPerS() {
        return outputV / combinedInductanceH();
    }
}
