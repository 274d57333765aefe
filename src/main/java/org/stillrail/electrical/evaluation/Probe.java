package org.stillrail.electrical.evaluation;

import java.util.EnumSet;
import java.util.Set;

/**
 * What is to be worked out at a corner, and what is already known there of a bank that is nearly the same.
 *
 * @param known   takes the place of what is not to be worked out; null where everything is
 * @param samples of a step's curve
 */
record Probe(Set<Item> items, CornerFigures known, int samples) {

    private static final int FEW = 2;
    private static final int CURVE = 600;

    /** One costly piece of the figures. */
    enum Item { RIPPLE, LOOP, STEP, RELEASE }

    static Probe everything(boolean curves) {
        return new Probe(EnumSet.allOf(Item.class), null, curves ? CURVE : FEW);
    }

    static Probe of(Set<Item> items, CornerFigures known) {
        return new Probe(items, known, FEW);
    }

    boolean wants(Item item) {
        return items.contains(item);
    }
}
