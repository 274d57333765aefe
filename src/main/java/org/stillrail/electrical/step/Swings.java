package org.stillrail.electrical.step;

import java.util.ArrayList;
import java.util.List;

/**
 * The turning points of a response that starts at 0, in order: where it changes direction, and both sides of jumps where they are
 * extreme. Swings too small to matter are left out.
 */
final class Swings {

    /** A turning point in time. */
    record Turn(double atS, double v) {
    }

    /** A swing below this share of the largest value so far is none. */
    private static final double SMALL = 1e-6;

    private final List<Turn> turns = new ArrayList<>();
    private Turn candidate = new Turn(0, 0);
    private int direction;
    private double largest;

    void add(Segment voltage) {
        add(voltage.startS(), voltage.value0());
        for (double fraction : voltage.turningFractions()) {
            add(voltage.startS() + fraction * voltage.lengthS(), voltage.at(fraction));
        }
        add(voltage.endS(), voltage.value1());
    }

    private void add(double atS, double v) {
        largest = Math.max(largest, Math.abs(v));
        double beyond = v - candidate.v();
        if (direction == 0 && beyond != 0) {
            turns.add(candidate);
            direction = beyond > 0 ? 1 : -1;
            candidate = new Turn(atS, v);
        } else if (beyond * direction >= 0) {
            candidate = new Turn(atS, v);
        } else if (Math.abs(beyond) > SMALL * largest) {
            turns.add(candidate);
            direction = -direction;
            candidate = new Turn(atS, v);
        }
    }

    /** The first is the start, the last the value at the end. */
    List<Turn> turns() {
        List<Turn> all = new ArrayList<>(turns);
        all.add(candidate);
        return all;
    }

    /** All falls of the response together, positive. */
    double totalFallV() {
        double sum = 0;
        List<Turn> all = turns();
        for (int k = 1; k < all.size(); k++) {
            sum += Math.max(0, all.get(k - 1).v() - all.get(k).v());
        }
        return sum;
    }

    double totalVariationV() {
        double sum = 0;
        List<Turn> all = turns();
        for (int k = 1; k < all.size(); k++) {
            sum += Math.abs(all.get(k).v() - all.get(k - 1).v());
        }
        return sum;
    }
}
