package org.stillrail.electrical.requirement;

import java.util.List;

/**
 * How the loop is closed: by given compensator values, or by the crossover and phase margin that it is placed for.
 *
 * @param rampV          modulator ramp, voltage mode
 * @param senseOhm       current-sense gain, current mode
 * @param slopeAPerS     compensating slope, current mode
 * @param delayS         modulator delay; null stands for half a switching period
 * @param gain           of the compensator {@code C(s) = gain / s * prod(1 + s/wz) / prod(1 + s/wp)} in rad/s; null where it is placed
 * @param zerosHz        with {@code gain}
 * @param polesHz        with {@code gain}
 * @param crossoverHz    wanted crossover where the compensator is placed
 * @param phaseMarginDeg wanted phase margin where the compensator is placed
 */
public record ControlFigures(
        Kind kind, Double rampV, Double senseOhm, Double slopeAPerS, Double delayS, Double gain, List<Double> zerosHz, List<Double> polesHz,
        Double crossoverHz, Double phaseMarginDeg) {

    /** What the compensator's output sets. */
    public enum Kind { VOLTAGE_MODE, CURRENT_MODE }

    public ControlFigures {
        zerosHz = zerosHz == null ? List.of() : List.copyOf(zerosHz);
        polesHz = polesHz == null ? List.of() : List.copyOf(polesHz);
    }
}
