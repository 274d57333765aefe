package org.stillrail.electrical.stress;

import java.util.Objects;
import java.util.function.DoubleFunction;
import org.stillrail.electrical.capacitor.ImpedanceModel;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.ripple.HarmonicCurrents;

/**
 * What one part of a branch goes through.
 *
 * @param ambientC      of the air round it
 * @param appliedV      DC voltage
 * @param lowestV       the lowest voltage that it ever sees, negative where it is reversed
 * @param currents      of each of the branch's parts
 * @param fundamentalHz frequency of order 1 of the currents
 * @param partAtC       the part's impedance at a core temperature in degC; the current is taken as the same at every one
 */
public record PartConditions(
        double ambientC, double appliedV, double lowestV, HarmonicCurrents currents, double fundamentalHz,
        DoubleFunction<? extends ImpedanceModel> partAtC) {

    public PartConditions {
        Require.finite("ambientC", ambientC);
        Require.finite("appliedV", appliedV);
        Require.finite("lowestV", lowestV);
        Require.positive("fundamentalHz", fundamentalHz);
        Objects.requireNonNull(currents, "currents");
        Objects.requireNonNull(partAtC, "partAtC");
    }
}
