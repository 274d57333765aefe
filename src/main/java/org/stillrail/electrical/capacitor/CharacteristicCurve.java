package org.stillrail.electrical.capacitor;

import java.util.List;

/**
 * How one property of a part goes with another: points read from a datasheet or measured, straight lines between them.
 * Beyond the first and the last point their values are held; {@link #covers} says where that happens.
 *
 * @param points at least 1, strictly increasing in x, y positive
 * @param scale  whether lines are straight over x or over log x
 */
public record CharacteristicCurve(List<Point> points, Scale scale) {

    /** What the lines are straight over. */
    public enum Scale { LINEAR, LOGARITHMIC }

    /** One point of the curve. */
    public record Point(double x, double y) {
    }

    public CharacteristicCurve {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("points must not be empty");
        }
        for (int i = 0; i < points.size(); i++) {
            Require.finite("points[" + i + "].x", points.get(i).x());
            Require.positive("points[" + i + "].y", points.get(i).y());
            if (scale == Scale.LOGARITHMIC) {
                Require.positive("points[" + i + "].x", points.get(i).x());
            }
            if (i > 0 && !(points.get(i).x() > points.get(i - 1).x())) {
                throw new IllegalArgumentException("points[" + i + "].x must be above " + points.get(i - 1).x()
                        + ", not " + points.get(i).x());
            }
        }
    }

    /** Straight over x; given as x and y in turn. */
    public static CharacteristicCurve linear(double... xAndY) {
        return new CharacteristicCurve(pairs(xAndY), Scale.LINEAR);
    }

    /** Straight over log x; given as x and y in turn. */
    public static CharacteristicCurve logarithmic(double... xAndY) {
        return new CharacteristicCurve(pairs(xAndY), Scale.LOGARITHMIC);
    }

    private static List<Point> pairs(double... xAndY) {
        if (xAndY.length % 2 != 0) {
            throw new IllegalArgumentException("x and y must come in pairs, not " + xAndY.length + " numbers");
        }
        Point[] points = new Point[xAndY.length / 2];
        for (int i = 0; i < points.length; i++) {
            points[i] = new Point(xAndY[2 * i], xAndY[2 * i + 1]);
        }
        return List.of(points);
    }

    public double at(double x) {
        Point previous = points.get(0);
        if (x <= previous.x()) {
            return previous.y();
        }
        for (Point point : points) {
            if (x <= point.x()) {
                double share = scale == Scale.LINEAR
                        ? (x - previous.x()) / (point.x() - previous.x())
                        : Math.log(x / previous.x()) / Math.log(point.x() / previous.x());
                return previous.y() + share * (point.y() - previous.y());
            }
            previous = point;
        }
        return previous.y();
    }

    /** Whether x lies between the first and the last point. */
    public boolean covers(double x) {
        return x >= points.get(0).x() && x <= points.get(points.size() - 1).x();
    }
}
