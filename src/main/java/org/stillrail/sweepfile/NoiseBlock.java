package org.stillrail.sweepfile;

import java.util.List;

/**
 * The noise data that may follow the network data of a version 1 file of two ports: five numbers a line, the first of them a
 * frequency that is not above the last network frequency. Without that last condition it could be a file cut off half-way.
 */
final class NoiseBlock {

    private static final int NUMBERS = 5;

    private NoiseBlock() {
    }

    /** Index of the first of the lines at the end that all have five numbers; the number of lines where there are none. */
    static int possibleStart(List<NumberLine> lines) {
        int start = lines.size();
        while (start > 0 && lines.get(start - 1).size() == NUMBERS) {
            start--;
        }
        return start;
    }

    /** Index of the first line of noise; the number of lines where there is none. */
    static int start(List<NumberLine> lines, int perPoint) {
        int start = possibleStart(lines);
        if (start == 0 || start == lines.size()) {
            return lines.size();
        }
        int first = start;
        int count = 0;
        while (first > 0 && count < perPoint) {
            first--;
            count += lines.get(first).size();
        }
        boolean afterWholePoint = count == perPoint;
        boolean notAbove = lines.get(start).values()[0] <= lines.get(first).values()[0];
        return afterWholePoint && notAbove ? start : lines.size();
    }
}
