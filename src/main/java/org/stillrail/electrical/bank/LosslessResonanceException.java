package org.stillrail.electrical.bank;

/** A resonance without loss falls on a frequency that was asked for, so the impedance there is 0 or infinite. */
public class LosslessResonanceException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final double frequencyHz;

    public LosslessResonanceException(String what, double frequencyHz) {
        super(what + " has a resonance without loss at " + frequencyHz
                + " Hz, where its impedance is needed; give it some resistance or move the frequency");
        this.frequencyHz = frequencyHz;
    }

    public double frequencyHz() {
        return frequencyHz;
    }
}
