package org.stillrail.electrical.spread;

import org.stillrail.electrical.requirement.Bound;

/** A limit that random banks are held against. */
public record RandomLimit(RandomFigure figure, Bound bound, double limit) {

    boolean keptBy(double value) {
        return bound == Bound.AT_MOST ? value <= limit : value >= limit;
    }
}
