package org.stillrail.electrical.step;

/** The response holds more detail than one call may compute; the message says what to change. */
public class StepBudgetException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    StepBudgetException(String message) {
        super(message);
    }
}
