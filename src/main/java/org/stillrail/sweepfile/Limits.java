package org.stillrail.sweepfile;

/** What a file may hold at most, so that no upload can fill the memory. */
final class Limits {

    static final int BYTES = 20 * 1024 * 1024;
    static final int POINTS = 200_000;
    /** Lines of a Touchstone file that hold more than a comment: a point may be wrapped over several. */
    static final int LINES = 1_000_000;
    static final int LINE_CHARACTERS = 100_000;
    /** Cells of one line of delimited text. */
    static final int COLUMNS = 1_000;

    private Limits() {
    }

    static void checkSize(byte[] bytes) {
        if (bytes.length == 0) {
            throw SweepFileException.ofFile("The file is empty");
        }
        if (bytes.length > BYTES) {
            throw SweepFileException.ofFile("The file has " + bytes.length + " bytes; at most 20 MiB (" + BYTES + " bytes) are read");
        }
    }

    /** A line without end would be split into millions of cells before it could be refused. */
    static void checkLines(String text) {
        int number = 0;
        int start = 0;
        while (start < text.length()) {
            int end = text.indexOf('\n', start);
            end = end < 0 ? text.length() : end;
            number++;
            if (end - start > LINE_CHARACTERS) {
                throw new SweepFileException(number, "the line is longer than 100,000 characters");
            }
            start = end + 1;
        }
    }

    static void checkPoints(int lineNumber, int points) {
        if (points > POINTS) {
            throw new SweepFileException(lineNumber, "the file has more than 200,000 points, which is the most that is read");
        }
    }
}
