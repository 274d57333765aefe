package org.stillrail.electrical.capacitor;

import java.util.Arrays;
import java.util.Objects;

/**
 * ESR over temperature: wet aluminium in the cold may have many times its resistance at room temperature.
 *
 * <p>What changes is the series resistance, not the loss of the dielectric. So with the factor {@code r} a constant
 * {@code (r - 1) Re Z(f)} is added at the curve's frequency f; where r is below 1, no more than the same share of the lowest
 * Re Z is taken away, so that the part stays passive.
 *
 * @param factor      over temperature in degC, any reference
 * @param frequencyHz where the curve's ESR is stated
 */
public record ResistanceCurve(CharacteristicCurve factor, double frequencyHz) {

    private static final double FLOOR_HZ = 1e9;

    public ResistanceCurve {
        Objects.requireNonNull(factor, "factor");
        Require.positive("frequencyHz", frequencyHz);
    }

    /** Resistance at one temperature over that at another. */
    public double ratio(double temperatureC, double ownTemperatureC) {
        return factor.at(temperatureC) / factor.at(ownTemperatureC);
    }

    /** A model whose ESR at {@code frequencyHz} is {@code ratio} times what it was, or nearly so for ratios below 1. */
    static ImpedanceModel scaled(ImpedanceModel model, double ratio, double frequencyHz) {
        if (ratio == 1) {
            return model;
        }
        double series = Math.max(0, model.at(frequencyHz).resistanceOhm());
        if (ratio < 1) {
            double floor = Arrays.stream(model.knotsHz()).map(hz -> model.at(hz).resistanceOhm()).min()
                    .orElse(model.at(FLOOR_HZ).resistanceOhm());
            series = Math.max(0, Math.min(series, floor));
        }
        return new ShiftedResistance(model, (ratio - 1) * series);
    }
}
