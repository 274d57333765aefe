package org.stillrail.electrical.evaluation;

import org.stillrail.electrical.spread.RandomLimit;
import org.stillrail.electrical.spread.Yield;

/**
 * A limit of the rail and the share of random banks that keep it.
 *
 * @param name    of the limit
 * @param yield   null where it is not known
 * @param unknown why not, as a sentence; else null
 */
public record LimitSpread(String name, RandomLimit limit, Yield yield, String unknown) {
}
