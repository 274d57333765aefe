package org.stillrail.electrical.requirement;

/**
 * The straight ramp by which a rail comes up.
 *
 * @param rampS from 0 V to the nominal voltage
 * @param loadA drawn meanwhile; null counts the rail's nominal current, which is on the safe side
 */
public record StartUpRamp(double rampS, Double loadA, Citation citation) {
}
