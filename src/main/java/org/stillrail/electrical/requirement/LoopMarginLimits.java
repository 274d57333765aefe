package org.stillrail.electrical.requirement;

/** Where a rail asks for them: the least phase margin and the least gain margin of its loop; null is no bound. */
public record LoopMarginLimits(Double leastPhaseDeg, Double leastGainDb, Citation citation) {
}
