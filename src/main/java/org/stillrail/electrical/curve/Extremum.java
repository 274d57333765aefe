package org.stillrail.electrical.curve;

/**
 * A local minimum or maximum of |Z|.
 *
 * @param magnitudeOhm  |Z| there; a maximum without any loss is a very large number, not an exact one
 * @param qualityFactor {@code (f0 / 2) |d phase / df|} with the phase in radians; infinite where nothing damps
 */
public record Extremum(Kind kind, double frequencyHz, double magnitudeOhm, double qualityFactor) {

    public enum Kind { MINIMUM, MAXIMUM }
}
