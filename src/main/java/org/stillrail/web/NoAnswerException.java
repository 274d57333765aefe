package org.stillrail.web;

import java.time.Duration;

/** A request that is in order but gets no answer now. */
public class NoAnswerException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private NoAnswerException(String message, Throwable cause) {
        super(message, cause);
    }

    static NoAnswerException outOfTime(Duration budget) {
        return new NoAnswerException("The calculation was stopped after " + budget.toMillis() / 1000.0
                + " s of computing, the most that a call may take; ask for fewer points, branches, samples or banks", null);
    }

    /** The calculation foresaw or found that it cannot end in time. */
    public static NoAnswerException tooMuch(String reason) {
        return new NoAnswerException(reason, null);
    }

    static NoAnswerException busy() {
        return new NoAnswerException("Too many calculations are waiting; try again in a few seconds", null);
    }

    public static NoAnswerException failed(Throwable cause) {
        return new NoAnswerException("The calculation broke off, which is a fault of the program; it has been written to the log", cause);
    }
}
