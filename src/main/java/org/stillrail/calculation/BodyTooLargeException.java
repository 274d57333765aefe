package org.stillrail.calculation;

/** The body of a request is over {@link Limits#BODY_BYTES}. */
class BodyTooLargeException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    BodyTooLargeException() {
        super("The body is over " + Limits.BODY_MIB + " MiB, the most that is taken");
    }
}
