package org.stillrail.electrical.curve;

/** A complex value at one frequency together with its slope over frequency; at a kink the slope towards higher frequency. */
public interface SlopedPoint {

    double re();

    double im();

    /** d re / df. */
    double rePerHz();

    /** d im / df. */
    double imPerHz();

    /** Square of the magnitude. */
    default double squaredMagnitude() {
        return re() * re() + im() * im();
    }

    /** Half the slope of the squared magnitude over frequency: its sign is the sign of the slope of the magnitude. */
    default double magnitudeSlope() {
        return re() * rePerHz() + im() * imPerHz();
    }

    /** d phase / df in rad/Hz. */
    default double phaseSlope() {
        return (re() * imPerHz() - im() * rePerHz()) / squaredMagnitude();
    }
}
