package org.stillrail.electrical.step;

/** The step cannot be answered as asked: no steady state to start from, or a response without bounds. The message says why. */
public class StepRefusedException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    StepRefusedException(String message) {
        super(message);
    }
}
