package org.stillrail.electrical.capacitor;

/**
 * The largest rms ripple current of a part, with its multipliers.
 *
 * @param currentA        at the reference frequency and temperature
 * @param overFrequency   rating at a frequency in Hz over that at the reference frequency; straight over log f; null where
 *                        not known, which leaves the rating as it is
 * @param overTemperature rating at an ambient in degC over that at the reference temperature; null where not known
 */
public record RippleRating(double currentA, CharacteristicCurve overFrequency, CharacteristicCurve overTemperature) {

    public RippleRating {
        Require.positive("currentA", currentA);
    }

    /** kf, to weigh a harmonic with. */
    public double frequencyFactor(double hz) {
        return overFrequency == null ? 1 : overFrequency.at(hz);
    }

    /** The rating at the reference frequency and an ambient temperature, in A. */
    public double ratedA(double temperatureC) {
        return overTemperature == null ? currentA : currentA * overTemperature.at(temperatureC);
    }
}
