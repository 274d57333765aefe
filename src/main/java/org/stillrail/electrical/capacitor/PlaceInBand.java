package org.stillrail.electrical.capacitor;

import java.util.Objects;

/**
 * Where in its spread a part is taken to be.
 *
 * @param deviation        of the capacitance from nominal, such as -0.2; null leaves the capacitance of the model itself
 * @param resistanceFactor ESR over that of the model, positive
 * @param change           which end of the band where a class code alone says how capacitance goes with temperature
 * @param endOfLife        whether the drift of the end of life has happened
 */
public record PlaceInBand(Double deviation, double resistanceFactor, Band.Bound change, boolean endOfLife) {

    public static final PlaceInBand AS_MODELLED = new PlaceInBand(null, 1, Band.Bound.TYPICAL, false);

    public PlaceInBand {
        Objects.requireNonNull(change, "change");
        Require.positive("resistanceFactor", resistanceFactor);
        if (deviation != null && !(deviation > -1 && deviation < 10)) {
            throw new IllegalArgumentException("deviation must be above -1 and below 10, not " + deviation);
        }
    }
}
