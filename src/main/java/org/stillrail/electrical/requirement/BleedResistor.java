package org.stillrail.electrical.requirement;

/**
 * What empties the bank after switching off.
 *
 * @param safeV the voltage that counts as safe; null for the usual one
 */
public record BleedResistor(double resistanceOhm, Double safeV, Citation citation) {
}
