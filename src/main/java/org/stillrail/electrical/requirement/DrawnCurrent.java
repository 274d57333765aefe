package org.stillrail.electrical.requirement;

import java.util.List;

/**
 * The current into the output node over one switching period, drawn by its points, all phases together: linear between them, and from the
 * last to the first of the next period. It stands in for a converter of another kind. Its mean is of no account.
 *
 * @param points at least two, the first at 0 s, later and later; an edge is two points, as far apart as it lasts
 */
public record DrawnCurrent(List<Point> points) {

    /** @param timeS from the beginning of the period */
    public record Point(double timeS, double currentA) {
    }

    /** @throws IllegalArgumentException saying which point breaks a rule */
    public DrawnCurrent {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("A drawn current needs at least two points, not " + points.size());
        }
        if (points.get(0).timeS() != 0) {
            throw new IllegalArgumentException("The first point of a drawn current stands at 0 s");
        }
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).timeS() > points.get(i - 1).timeS())) {
                throw new IllegalArgumentException("Point " + (i + 1) + " of a drawn current must be later than the one before; an edge lasts a while");
            }
        }
    }

    /** Time of the last point, in s. */
    public double lastS() {
        return points.get(points.size() - 1).timeS();
    }
}
