package org.stillrail.electrical.fit;

/** Why the order search ended. */
public enum StopReason {

    /** The tolerances were reached. */
    TOLERANCE("The tolerance was reached."),
    /** The error is that of the points' own noise; a higher order would follow the noise. */
    NOISE("The error is down at the noise of the points."),
    /** More poles, up to the limit, brought nothing more; the smallest order close to the best is given. */
    NO_BETTER("No order up to the limit reached the tolerance; the smallest that comes about as near as any is given.");

    private final String sentence;

    StopReason(String sentence) {
        this.sentence = sentence;
    }

    public String sentence() {
        return sentence;
    }
}
