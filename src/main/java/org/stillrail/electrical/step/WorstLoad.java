package org.stillrail.electrical.step;

import java.util.List;

/**
 * The load pattern that does worst to a regulated rail, and what it does, in the linear model. The same pattern mirrored about
 * the middle of the currents rises as far as this one falls.
 *
 * @param deviationV     the largest deviation that any load within the current limits and the slew can cause, positive
 * @param singleStepV    the largest deviation of one step between the limits, for comparison
 * @param timeS          corners of the pattern, from 0; straight lines between
 * @param loadA          the load's current there, same length
 * @param deviationAtS   when the pattern has its full effect
 * @param warnings       sentences
 */
public record WorstLoad(
        double deviationV, double singleStepV, double[] timeS, double[] loadA, double deviationAtS, List<String> warnings) {

    public WorstLoad {
        timeS = timeS.clone();
        loadA = loadA.clone();
        warnings = List.copyOf(warnings);
    }

    @Override
    public double[] timeS() {
        return timeS.clone();
    }

    @Override
    public double[] loadA() {
        return loadA.clone();
    }
}
