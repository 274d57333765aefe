package org.stillrail.electrical.requirement;

import java.util.List;
import org.stillrail.electrical.converter.Compensator;
import org.stillrail.electrical.converter.CompensatorParts;
import org.stillrail.electrical.converter.Transconductance;

/**
 * How the loop is closed: by given compensator values, by the parts of its network, or by the crossover and phase margin that it is placed for.
 *
 * @param rampV          modulator ramp, voltage mode
 * @param senseOhm       current-sense gain, current mode
 * @param slopeAPerS     compensating slope, current mode
 * @param delayS         modulator delay; null stands for half a switching period
 * @param gain           of the compensator {@code C(s) = gain / s * prod(1 + s/wz) / prod(1 + s/wp)} in rad/s; null where it is placed or made of parts
 * @param zerosHz        with {@code gain}
 * @param polesHz        with {@code gain}
 * @param crossoverHz    wanted crossover where the compensator is placed
 * @param phaseMarginDeg wanted phase margin where the compensator is placed
 * @param parts          of the compensator's network; null where it is placed or given by its gain
 * @param amplifier      that the network belongs to where it is a transconductance amplifier; null for an op-amp
 */
public record ControlFigures(
        Kind kind, Double rampV, Double senseOhm, Double slopeAPerS, Double delayS, Double gain, List<Double> zerosHz, List<Double> polesHz,
        Double crossoverHz, Double phaseMarginDeg, CompensatorParts parts, Transconductance amplifier) {

    /** What the compensator's output sets. */
    public enum Kind { VOLTAGE_MODE, CURRENT_MODE }

    /** Which of the three says what the compensator is. */
    public enum Given { PLACED, GAIN, PARTS }

    public ControlFigures {
        zerosHz = zerosHz == null ? List.of() : List.copyOf(zerosHz);
        polesHz = polesHz == null ? List.of() : List.copyOf(polesHz);
        if (amplifier != null && parts != null && !amplifier.has(parts)) {
            throw new IllegalArgumentException("parts are not a network of the transconductance amplifier");
        }
    }

    /** Of an op-amp. */
    public ControlFigures(Kind kind, Double rampV, Double senseOhm, Double slopeAPerS, Double delayS, Double gain, List<Double> zerosHz,
            List<Double> polesHz, Double crossoverHz, Double phaseMarginDeg, CompensatorParts parts) {
        this(kind, rampV, senseOhm, slopeAPerS, delayS, gain, zerosHz, polesHz, crossoverHz, phaseMarginDeg, parts, null);
    }

    /** Without a network of parts. */
    public ControlFigures(Kind kind, Double rampV, Double senseOhm, Double slopeAPerS, Double delayS, Double gain, List<Double> zerosHz,
            List<Double> polesHz, Double crossoverHz, Double phaseMarginDeg) {
        this(kind, rampV, senseOhm, slopeAPerS, delayS, gain, zerosHz, polesHz, crossoverHz, phaseMarginDeg, null, null);
    }

    public Given given() {
        return parts != null ? Given.PARTS : gain != null ? Given.GAIN : Given.PLACED;
    }

    /** The compensator as given; null where it is placed for the bank. */
    public Compensator compensator() {
        return switch (given()) {
            case PARTS -> parts.compensator();
            case GAIN -> new Compensator(gain, zerosHz, polesHz);
            case PLACED -> null;
        };
    }
}
