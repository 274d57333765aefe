package org.stillrail.sweepfile;

/** A file that is refused, in words for the person who chose it. The only exception that reading a sweep lets out. */
public class SweepFileException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final int lineNumber;
    private final String reason;
    private final boolean ofBlock;

    /**
     * @param lineNumber counted from 1; 0 where the reason belongs to the file as a whole
     * @param reason     a sentence without a full stop
     */
    public SweepFileException(int lineNumber, String reason) {
        this(lineNumber, reason, false);
    }

    private SweepFileException(int lineNumber, String reason, boolean ofBlock) {
        super(lineNumber > 0 ? "Line " + lineNumber + ": " + reason : reason);
        this.lineNumber = lineNumber;
        this.reason = reason;
        this.ofBlock = ofBlock;
    }

    public static SweepFileException ofFile(String reason) {
        return new SweepFileException(0, reason);
    }

    /** The file holds fewer sweeps than the one that was asked for. */
    static SweepFileException ofBlock(String reason) {
        return new SweepFileException(0, reason, true);
    }

    /** Whether the {@code block} of the {@link ReadOptions} is what is wrong. */
    public boolean isOfBlock() {
        return ofBlock;
    }

    /** 0 where the reason belongs to the file as a whole. */
    public int lineNumber() {
        return lineNumber;
    }

    public String reason() {
        return reason;
    }
}
