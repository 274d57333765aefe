package org.stillrail.calculation;

/** What was sent is over a limit; the message says which. */
class BodyTooLargeException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    BodyTooLargeException(String message) {
        super(message);
    }
}
