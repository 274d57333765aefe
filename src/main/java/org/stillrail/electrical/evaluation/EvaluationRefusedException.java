package org.stillrail.electrical.evaluation;

/** Not even the impedance of the bank can be had as asked; the message says why and what to change. */
public class EvaluationRefusedException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    EvaluationRefusedException(String message, Throwable cause) {
        super(message, cause);
    }
}
