package org.stillrail.sweepfile;

import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;

/**
 * One line of a Touchstone file without its comment, and where it stands.
 *
 * @param number counted from 1
 * @param text   trimmed, not empty
 */
record SourceLine(int number, String text) {

    /** The lines that hold more than a comment. */
    static List<SourceLine> of(String file) {
        List<SourceLine> lines = new ArrayList<>();
        int number = 0;
        int start = 0;
        while (start < file.length()) {
            int end = file.indexOf('\n', start);
            end = end < 0 ? file.length() : end;
            number++;
            String text = withoutComment(file.substring(start, end));
            if (!text.isEmpty()) {
                if (lines.size() == Limits.LINES) {
                    throw new SweepFileException(number, "the file has more than a million lines of data");
                }
                lines.add(new SourceLine(number, text));
            }
            start = end + 1;
        }
        return lines;
    }

    static String withoutComment(String line) {
        int comment = line.indexOf('!');
        return (comment < 0 ? line : line.substring(0, comment)).strip();
    }

    boolean isOption() {
        return text.charAt(0) == '#';
    }

    boolean isKeyword() {
        return text.charAt(0) == '[';
    }

    /** The numbers of a data line. */
    NumberLine numbers() {
        return numbers(text);
    }

    /** The numbers in a part of this line; an empty part gives none. */
    NumberLine numbers(String part) {
        StringTokenizer tokens = new StringTokenizer(part);
        double[] values = new double[tokens.countTokens()];
        for (int i = 0; i < values.length; i++) {
            String token = tokens.nextToken();
            values[i] = NumberText.parse(token, false);
            if (Double.isNaN(values[i])) {
                throw new SweepFileException(number, Phrase.quoted(token) + " is not a finite number");
            }
        }
        return new NumberLine(number, values);
    }
}
