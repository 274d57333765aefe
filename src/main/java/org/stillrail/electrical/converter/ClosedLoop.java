package org.stillrail.electrical.converter;

import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * A closed loop on a grid. The arrays are the record's own.
 *
 * @param sensitivity  1 / |1 + T|
 * @param impedanceOhm |Z| that the load sees
 */
public record ClosedLoop(FrequencyGrid grid, double[] sensitivity, double[] impedanceOhm) {
}
