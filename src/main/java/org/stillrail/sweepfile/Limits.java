package org.stillrail.sweepfile;

/** What a file may hold at most, so that no upload can fill the memory. */
final class Limits {

    static final int BYTES = 20 * 1024 * 1024;
    static final int POINTS = 200_000;
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

    static void checkPoints(int lineNumber, int points) {
        if (points > POINTS) {
            throw new SweepFileException(lineNumber, "the file has more than 200,000 points, which is the most that is read");
        }
    }
}
