package org.stillrail.electrical.bench;

/**
 * How far a prediction is from the measurement in one band: predicted over measured, less 1, in per cent.
 *
 * @param points           compared in the band; with 0 there are no figures, the errors are null
 * @param passedOver       measured in the band, but the instrument does not tell |Z| there
 * @param rmsPercent       of |Z|
 * @param worstPercent     of |Z|, by size, with its sign
 * @param worstHz          where that is
 * @param resistancePoints of them, where the resistance is known
 * @param resistanceRmsPercent and {@code resistanceWorstPercent}: of the ESR where it is known, null where it nowhere is
 */
public record BandError(
        ErrorBand band, int points, int passedOver, Double rmsPercent, Double worstPercent, Double worstHz, int resistancePoints,
        Double resistanceRmsPercent, Double resistanceWorstPercent) {

    /** Null where nothing could be compared in the band. */
    public Boolean within(double magnitudePercent, double resistancePercent) {
        if (points == 0) {
            return null;
        }
        return Math.abs(worstPercent) <= magnitudePercent
                && (resistanceWorstPercent == null || Math.abs(resistanceWorstPercent) <= resistancePercent);
    }
}
