package org.stillrail.web;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Points as one field holds them: {@code 0 V: 100 %; 5 V: 72 %}, or one on each line.
 *
 * @param points as they were typed, each of {@code {x, y}}
 */
public record PointList(List<Point> points) {

    public record Point(double x, double y) {
    }

    public PointList {
        points = List.copyOf(points);
    }

    /**
     * @param label   of the field, for messages
     * @param example of two points
     * @throws IllegalArgumentException quoting what cannot be read
     */
    public static PointList parse(String label, String text, String xUnit, String yUnit, String example) {
        return new PointList(Arrays.stream(text.split("[;\\n]")).filter(each -> !each.isBlank()).map(each -> {
            int colon = each.indexOf(':');
            if (colon < 0) {
                throw new IllegalArgumentException(label + ": write points as " + example + ", not '" + each.strip() + "'");
            }
            return new Point(Quantity.parse(each.substring(0, colon), xUnit), Quantity.parse(each.substring(colon + 1), yUnit));
        }).toList());
    }

    /** As it can be typed again. */
    public String entry(String xUnit, String yUnit) {
        return points.stream().map(point -> Quantity.entry(point.x(), xUnit) + ": " + Quantity.entry(point.y(), yUnit)).collect(Collectors.joining("; "));
    }
}
