package org.stillrail.electrical.requirement;

/** Largest ripple, peak to peak, in V. */
public record RippleLimit(double peakToPeakV, Citation citation) {
}
