package org.stillrail.electrical.converter;

/** The wished crossover and phase margin cannot be had; the message says why. */
public class DesignRefusedException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    DesignRefusedException(String message) {
        super(message);
    }
}
