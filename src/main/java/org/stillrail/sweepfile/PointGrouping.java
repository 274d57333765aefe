package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines of numbers to points of a fixed count of numbers each. Values are counted, not lines, so that a point may be wrapped;
 * where a count goes wrong, the line at which the faulty point begins is named.
 */
final class PointGrouping {

    private PointGrouping() {
    }

    /** Every point begins on a new line, as version 1 asks. */
    static List<NumberLine> byLine(List<NumberLine> lines, int perPoint, String what) {
        List<NumberLine> points = new ArrayList<>();
        int i = 0;
        while (i < lines.size()) {
            int first = i;
            int count = 0;
            while (i < lines.size() && count < perPoint) {
                count += lines.get(i).size();
                i++;
            }
            if (count != perPoint) {
                throw miscounted(lines, first, perPoint, what);
            }
            points.add(i == first + 1 ? lines.get(first) : joined(lines.subList(first, i), perPoint));
            Limits.checkPoints(lines.get(first).number(), points.size());
        }
        return points;
    }

    /** Points run on without regard to lines; the total must fit {@code expected} points exactly. */
    static List<NumberLine> byCount(List<NumberLine> lines, int perPoint, int expected, int headerLine, String what) {
        Limits.checkPoints(headerLine, expected);
        long total = 0;
        for (NumberLine line : lines) {
            total += line.size();
        }
        if (total != (long) expected * perPoint) {
            List<NumberLine> found = byLine(lines, perPoint, what);
            throw new SweepFileException(headerLine, "[Number of Frequencies] says " + expected + ", but the data hold "
                    + Phrase.count(found.size(), "point"));
        }
        List<NumberLine> points = new ArrayList<>(expected);
        double[] point = new double[perPoint];
        int filled = 0;
        int startLine = 0;
        for (NumberLine line : lines) {
            for (double value : line.values()) {
                startLine = filled == 0 ? line.number() : startLine;
                point[filled++] = value;
                if (filled == perPoint) {
                    points.add(new NumberLine(startLine, point));
                    point = new double[perPoint];
                    filled = 0;
                }
            }
        }
        return points;
    }

    private static NumberLine joined(List<NumberLine> lines, int perPoint) {
        double[] values = new double[perPoint];
        int filled = 0;
        for (NumberLine line : lines) {
            System.arraycopy(line.values(), 0, values, filled, line.size());
            filled += line.size();
        }
        return new NumberLine(lines.get(0).number(), values);
    }

    private static SweepFileException miscounted(List<NumberLine> lines, int first, int perPoint, String what) {
        NumberLine line = lines.get(first);
        String need = "a point of " + what + " needs " + perPoint + " numbers, its frequency included";
        if (first + 1 == lines.size() && line.size() < perPoint) {
            return new SweepFileException(line.number(), "the file ends within a point: "
                    + Phrase.count(line.size(), "number") + " here, " + need);
        }
        return new SweepFileException(line.number(), Phrase.count(line.size(), "number") + " where " + need
                + (line.size() < perPoint ? ", and the lines that follow do not complete it" : ""));
    }
}
