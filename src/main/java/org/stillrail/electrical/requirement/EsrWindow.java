package org.stillrail.electrical.requirement;

/** Where a rail asks for it: bounds of Re Z of the bank at the loop's crossover; null is no bound. */
public record EsrWindow(Double minimumOhm, Double maximumOhm, Citation citation) {
}
