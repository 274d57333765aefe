package org.stillrail.electrical.requirement;

/** Air temperature round the bank, in degrees Celsius. */
public record Ambient(double minimumC, double nominalC, double maximumC, Citation citation) {
}
