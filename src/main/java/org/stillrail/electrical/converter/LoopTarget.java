package org.stillrail.electrical.converter;

import org.stillrail.electrical.capacitor.Require;

/**
 * What a compensator is to be placed for.
 *
 * @param crossoverHz    positive
 * @param phaseMarginDeg above 0, below 180
 */
public record LoopTarget(double crossoverHz, double phaseMarginDeg) {

    public LoopTarget {
        Require.positive("crossoverHz", crossoverHz);
        Require.positive("phaseMarginDeg", phaseMarginDeg);
        if (phaseMarginDeg >= 180) {
            throw new IllegalArgumentException("phaseMarginDeg must be below 180, not " + phaseMarginDeg);
        }
    }
}
