package org.stillrail.electrical.evaluation;

import java.util.EnumSet;
import java.util.Set;

/**
 * What is to be worked out at a corner, and what is already known there of a bank that is nearly the same.
 *
 * @param known     takes the place of what is not to be worked out; null where everything is
 * @param samples   of a step's curve
 * @param exhausted the steps of another corner that took too long, so that they are not tried here; else null
 */
record Probe(Set<Item> items, CornerFigures known, int samples, Tried<StepPair> exhausted) {

    private static final int FEW = 2;
    private static final int CURVE = 600;

    /** One costly piece of the figures. */
    enum Item { RIPPLE, LOOP, STEP, RELEASE }

    /**
     * @param nominal null at the nominal corner itself
     * @param drawn   whether the steps of this corner are drawn
     */
    static Probe everything(CornerFigures nominal, boolean drawn) {
        Tried<StepPair> steps = nominal == null ? null : nominal.steps();
        return new Probe(EnumSet.allOf(Item.class), null, drawn ? CURVE : FEW, steps != null && steps.exhausted() ? steps : null);
    }

    static Probe of(Set<Item> items, CornerFigures known) {
        return new Probe(items, known, FEW, known.steps() != null && known.steps().exhausted() ? known.steps() : null);
    }

    boolean exactRipple() {
        return known == null && samples == CURVE;
    }

    boolean wants(Item item) {
        return items.contains(item);
    }
}
