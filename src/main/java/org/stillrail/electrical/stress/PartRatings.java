package org.stillrail.electrical.stress;

import java.util.Objects;
import org.stillrail.electrical.capacitor.RippleRating;
import org.stillrail.electrical.capacitor.Technology;

/**
 * What a datasheet lets a part bear. What it does not say is null.
 *
 * @param reverseV           allowed backwards, a positive number
 * @param ratedTemperatureC  upper end of its temperature range
 * @param thermal            given, or estimated from its case
 */
public record PartRatings(
        Technology technology, Double ratedV, Double reverseV, Double ratedTemperatureC, RippleRating ripple, ThermalResistance thermal,
        LifeRating life) {

    public PartRatings {
        Objects.requireNonNull(technology, "technology");
    }
}
