package org.stillrail.electrical.step;

import java.util.ArrayList;
import java.util.List;

/** The compensator's output over the last delay, as cubics, clamped to the duty's limits when it is read. Zero before t = 0. */
final class DutyHistory {

    private static final int KEPT_AT_LEAST = 1000;

    private final double delayS;
    private final double lowest;
    private final double highest;
    private final List<Segment> segments = new ArrayList<>();
    private int forgotten;

    /** @param lowest negative infinity for no limit; {@code highest} likewise */
    DutyHistory(double delayS, double lowest, double highest) {
        this.delayS = delayS;
        this.lowest = lowest;
        this.highest = highest;
    }

    void add(Segment command) {
        segments.add(command);
        while (segments.get(forgotten).endS() < command.endS() - 2 * delayS) {
            forgotten++;
        }
        if (forgotten > KEPT_AT_LEAST && forgotten > segments.size() / 2) {
            segments.subList(0, forgotten).clear();
            forgotten = 0;
        }
    }

    /** The delayed duty on {@code atS .. atS + lengthS} as a cubic in time from {@code atS}: value and three rates. */
    double[] cubic(double atS, double lengthS, Segment current) {
        double start = atS - delayS;
        double end = start + lengthS;
        double slack = 8 * Math.ulp(atS + lengthS);
        Segment first = find(start + slack, current);
        Segment last = find(end - slack, current);
        double[] left = valueAndRate(first, start);
        double[] right = valueAndRate(last, end);
        double slope = (right[0] - left[0]) / lengthS;
        double second = (6 * slope - 4 * left[1] - 2 * right[1]) / lengthS;
        double third = (6 * left[1] + 6 * right[1] - 12 * slope) / (lengthS * lengthS);
        return new double[] {left[0], left[1], second, third};
    }

    double valueAt(double atS, Segment current) {
        return valueAndRate(find(atS - delayS, current), atS - delayS)[0];
    }

    private double[] valueAndRate(Segment segment, double atS) {
        if (segment == null) {
            return new double[2];
        }
        double fraction = segment.lengthS() == 0 ? 0 : Math.min(1, Math.max(0, (atS - segment.startS()) / segment.lengthS()));
        double value = segment.at(fraction);
        if (value > highest) {
            return new double[] {highest, 0};
        }
        if (value < lowest) {
            return new double[] {lowest, 0};
        }
        return new double[] {value, segment.lengthS() == 0 ? 0 : segment.rateAt(fraction)};
    }

    /** The stretch that holds an instant; {@code current} is the step being tried and lies beyond all others. */
    private Segment find(double atS, Segment current) {
        if (atS < 0) {
            return null;
        }
        if (current != null && atS >= current.startS()) {
            return current;
        }
        int low = forgotten;
        int high = segments.size() - 1;
        if (high < low) {
            return null;
        }
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (segments.get(middle).startS() <= atS) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return segments.get(low);
    }
}
