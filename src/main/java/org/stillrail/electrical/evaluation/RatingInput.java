package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.capacitor.RippleRating;
import org.stillrail.electrical.capacitor.Technology;
import org.stillrail.electrical.stress.LifeRating;
import org.stillrail.electrical.stress.PartRatings;
import org.stillrail.electrical.stress.ThermalResistance;

/**
 * What a part may bear beside its voltage, frozen. What its datasheet does not say is null.
 *
 * @param reverseV          allowed backwards, a positive number
 * @param ratedTemperatureC upper end of its temperature range
 * @param rippleAtC         ambient that the ripple rating is stated at
 * @param thermal           given, or estimated from the case
 */
public record RatingInput(
        Double reverseV, Double ratedTemperatureC, RippleRating ripple, Double rippleAtC, ThermalResistance thermal, LifeRating life) {

    public static final RatingInput NONE = new RatingInput(null, null, null, null, null, null);

    PartRatings of(Technology technology, Double ratedV) {
        return new PartRatings(technology, ratedV, reverseV, ratedTemperatureC, ripple, thermal, life);
    }
}
