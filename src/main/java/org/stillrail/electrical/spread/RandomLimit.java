package org.stillrail.electrical.spread;

import org.stillrail.electrical.requirement.Bound;

/** A limit that random banks are held against. */
public record RandomLimit(DrawnFigure figure, Bound bound, double limit) {

    /** On a figure of the whole bank. */
    public RandomLimit(RandomFigure kind, Bound bound, double limit) {
        this(DrawnFigure.ofBank(kind), bound, limit);
    }

    boolean keptBy(double value) {
        return bound == Bound.AT_MOST ? value <= limit : value >= limit;
    }
}
