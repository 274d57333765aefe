package org.stillrail.library;

/** A state that a part cannot have, such as vetted while it lacks something that the team asks for; the message says why. */
public class VettingRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String field;

    VettingRefusedException(String message) {
        this("vetting", message);
    }

    /** @param field of the form, which the message is about */
    VettingRefusedException(String field, String message) {
        super(message);
        this.field = field;
    }

    String field() {
        return field;
    }
}
