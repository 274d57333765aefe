package org.stillrail.electrical.evaluation;

import java.util.EnumSet;
import java.util.Set;

/**
 * What is to be worked out at a corner, and what is already known there of a bank that is nearly the same.
 *
 * @param known     takes the place of what is not to be worked out; null where everything is
 * @param drawn     whether curves of this corner are shown
 * @param exhausted the steps of another corner that took too long, so that they are not tried here; else null
 */
record Probe(Set<Item> items, CornerFigures known, boolean drawn, Tried<StepPair> exhausted) {

    /** One costly piece of the figures. */
    enum Item { RIPPLE, LOOP, STEP, RELEASE, STRESS }

    /** @param nominal null at the nominal corner itself */
    static Probe everything(CornerFigures nominal, boolean drawn) {
        Tried<StepPair> steps = nominal == null ? null : nominal.steps();
        return new Probe(EnumSet.allOf(Item.class), null, drawn, steps != null && steps.exhausted() ? steps : null);
    }

    static Probe of(Set<Item> items, CornerFigures known) {
        return new Probe(items, known, false, known.steps() != null && known.steps().exhausted() ? known.steps() : null);
    }

    boolean exactRipple() {
        return known == null && drawn;
    }

    boolean wants(Item item) {
        return items.contains(item);
    }
}
