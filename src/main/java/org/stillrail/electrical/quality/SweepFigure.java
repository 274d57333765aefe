package org.stillrail.electrical.quality;

/**
 * One figure drawn from a sweep.
 *
 * @param name        as in 'ESR at 100 kHz'
 * @param unit        F, ohm, H or Hz
 * @param value       null where the sweep does not reach
 * @param frequencyHz where it was read, null where it was not
 * @param uncertainty by the instrument, in the unit, both ways; null where it is not known, infinite where the figure is not
 */
public record SweepFigure(String name, String unit, Double value, Double frequencyHz, Double uncertainty) {

    /** False where the error is as large as the figure. */
    public boolean known() {
        return value != null && (uncertainty == null || uncertainty < Math.abs(value));
    }
}
