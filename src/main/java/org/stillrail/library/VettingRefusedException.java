package org.stillrail.library;

/** A part lacks something that the team asks for before it is vetted; the message says what. */
public class VettingRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    VettingRefusedException(String message) {
        super(message);
    }
}
