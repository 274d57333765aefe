package org.stillrail.sweepfile;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How many ports the data of a version 1 file have, which the file itself does not say. The counts of numbers on its lines
 * decide; the file's name decides only where the lines leave a choice.
 */
final class PortCount {

    private static final Pattern NAME = Pattern.compile(".*\\.s(\\d{1,3})p", Pattern.DOTALL);
    private static final int MOST_TRIED = 12;

    private PortCount() {
    }

    /** The number in an ending like {@code .s2p}; 0 where the name has none. */
    static int fromName(String fileName) {
        Matcher matcher = NAME.matcher(fileName == null ? "" : fileName.toLowerCase(Locale.ROOT));
        return matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
    }

    /** Numbers of one point: the frequency and a pair for each entry of the matrix. */
    static int numbersPerPoint(int ports) {
        return 2 * ports * ports + 1;
    }

    /** 1 or 2; refuses other counts, and lines that fit none. */
    static int of(List<NumberLine> lines, String fileName) {
        int named = fromName(fileName);
        if (named > 2) {
            throw SweepFileException.ofFile("The file's name says " + named + " ports; files of one or two ports are read");
        }
        int inLines = fromLines(lines, named);
        if (inLines > 2) {
            throw new SweepFileException(lines.get(0).number(), "the data have the shape of " + inLines
                    + " ports; files of one or two ports are read");
        }
        if (inLines > 0) {
            return inLines;
        }
        return nearest(lines.get(0), named);
    }

    private static int fromLines(List<NumberLine> lines, int named) {
        if (allHave(lines, numbersPerPoint(1))) {
            return 1;
        }
        if (named > 0 && fits(lines, named)) {
            return named;
        }
        for (int ports = 1; ports <= MOST_TRIED; ports++) {
            if (fits(lines, ports)) {
                return ports;
            }
        }
        return 0;
    }

    private static boolean allHave(List<NumberLine> lines, int size) {
        for (NumberLine line : lines) {
            if (line.size() != size) {
                return false;
            }
        }
        return true;
    }

    /** Whether every point begins on a new line, up to a noise block where there may be one. */
    private static boolean fits(List<NumberLine> lines, int ports) {
        int perPoint = numbersPerPoint(ports);
        return fits(lines, lines.size(), perPoint) || ports == 2 && fits(lines, NoiseBlock.possibleStart(lines), perPoint);
    }

    private static boolean fits(List<NumberLine> lines, int end, int perPoint) {
        int count = 0;
        for (int i = 0; i < end; i++) {
            count += lines.get(i).size();
            if (count > perPoint) {
                return false;
            }
            count = count == perPoint ? 0 : count;
        }
        return count == 0 && end > 0;
    }

    /** For a file with a faulty line: what its name or its first line means, so that the fault can be named. */
    private static int nearest(NumberLine first, int named) {
        if (first.size() == numbersPerPoint(1) || first.size() == numbersPerPoint(2)) {
            return first.size() == numbersPerPoint(1) ? 1 : 2;
        }
        if (named > 0) {
            return named;
        }
        throw new SweepFileException(first.number(), Phrase.count(first.size(), "number")
                + " here, but a point of one port needs 3 and a point of two ports 9, its frequency included");
    }
}
