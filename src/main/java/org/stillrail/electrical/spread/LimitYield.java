package org.stillrail.electrical.spread;

/** A limit and the share of random banks that keep it. */
public record LimitYield(RandomLimit limit, Yield yield) {
}
