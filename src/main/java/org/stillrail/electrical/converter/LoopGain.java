package org.stillrail.electrical.converter;

import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.curve.Complex;

/** The loop gain {@code T = C * plant} at single frequencies, as magnitude and continuous phase; without the summing minus. */
final class LoopGain {

    /**
     * @param logMagnitude natural logarithm of |T|, negative infinity where the bank is a short
     * @param phaseDeg     continuous from -90 (voltage mode) or -180 (current mode) at 0 Hz
     */
    record Point(double hz, double logMagnitude, double phaseDeg, Plant.Point plant) {

        /** 180 + phase: the phase margin if this is a crossing. */
        double marginDeg() {
            return 180 + phaseDeg;
        }

        double magnitude() {
            return Math.exp(logMagnitude);
        }

        /** T. */
        Complex value() {
            return Complex.polar(magnitude(), Math.toRadians(phaseDeg));
        }

        /** |1 + T|: zero only for a closed loop that rings for ever exactly here, and the least number keeps its reciprocal finite. */
        double returnDifference() {
            return Math.max(Complex.ONE.plus(value()).magnitude(), Double.MIN_NORMAL);
        }
    }

    private final Plant plant;
    private final Compensator compensator;

    LoopGain(Bank bank, Converter converter) {
        this.plant = new Plant(bank, converter.stage(), converter.control(), converter.loadLineOhm());
        this.compensator = converter.compensator();
    }

    /** Of banks that are told by their admittance, see {@link #on}. */
    LoopGain(Converter converter) {
        this.plant = new Plant(converter.stage(), converter.control(), converter.loadLineOhm());
        this.compensator = converter.compensator();
    }

    Point at(double hz) {
        return with(hz, plant.at(hz));
    }

    /** With a bank of this admittance at one node. */
    Point on(double hz, double conductance, double susceptance) {
        return with(hz, plant.on(hz, conductance, susceptance));
    }

    private Point with(double hz, Plant.Point point) {
        double logMagnitude = Math.log(point.magnitude()) + Math.log(compensator.magnitudeAt(hz));
        return new Point(hz, logMagnitude, point.phaseDeg() + compensator.phaseDegAt(hz), point);
    }

    boolean losslessAt(Point point) {
        return plant.losslessAt(point.plant());
    }
}
