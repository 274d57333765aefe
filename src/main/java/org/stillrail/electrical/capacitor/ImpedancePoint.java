package org.stillrail.electrical.capacitor;

import org.stillrail.electrical.curve.SlopedPoint;

/**
 * Impedance at one frequency with its slope over frequency, so that extrema and Q need no numerical differentiation.
 *
 * @param resistanceOhm        Re Z
 * @param reactanceOhm         Im Z
 * @param resistanceOhmPerHz   d Re Z / df
 * @param reactanceOhmPerHz    d Im Z / df
 */
public record ImpedancePoint(double resistanceOhm, double reactanceOhm, double resistanceOhmPerHz, double reactanceOhmPerHz)
        implements SlopedPoint {

    @Override
    public double re() {
        return resistanceOhm;
    }

    @Override
    public double im() {
        return reactanceOhm;
    }

    @Override
    public double rePerHz() {
        return resistanceOhmPerHz;
    }

    @Override
    public double imPerHz() {
        return reactanceOhmPerHz;
    }

    public ImpedancePoint plus(ImpedancePoint other) {
        return new ImpedancePoint(
                resistanceOhm + other.resistanceOhm,
                reactanceOhm + other.reactanceOhm,
                resistanceOhmPerHz + other.resistanceOhmPerHz,
                reactanceOhmPerHz + other.reactanceOhmPerHz);
    }

    public ImpedancePoint over(double divisor) {
        return new ImpedancePoint(
                resistanceOhm / divisor, reactanceOhm / divisor, resistanceOhmPerHz / divisor, reactanceOhmPerHz / divisor);
    }
}
