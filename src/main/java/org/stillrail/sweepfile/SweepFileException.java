package org.stillrail.sweepfile;

/** A file that is refused, in words for the person who chose it. The only exception that reading a sweep lets out. */
public class SweepFileException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int lineNumber;
    private final String reason;

    /**
     * @param lineNumber counted from 1; 0 where the reason belongs to the file as a whole
     * @param reason     a sentence without a full stop
     */
    public SweepFileException(int lineNumber, String reason) {
        super(lineNumber > 0 ? "Line " + lineNumber + ": " + reason : reason);
        this.lineNumber = lineNumber;
        this.reason = reason;
    }

    public static SweepFileException ofFile(String reason) {
        return new SweepFileException(0, reason);
    }

    /** 0 where the reason belongs to the file as a whole. */
    public int lineNumber() {
        return lineNumber;
    }

    public String reason() {
        return reason;
    }
}
