package org.stillrail.electrical.requirement;

/** A step of the load current and the deviation allowed for it, in both directions. */
public record LoadStep(double fromA, double toA, double slewAPerS, double allowedDeviationV, Citation citation) {
}
