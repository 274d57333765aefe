package org.stillrail.electrical.step;

import java.util.List;

/**
 * The load pattern that does worst to a regulated rail, and what it does, in the linear model. The same pattern mirrored about
 * the middle of the currents rises as far as this one falls.
 *
 * @param deviationV     the largest deviation that any load within the current limits and the slew can cause, positive; with a load line, below the rest at the
 *                       lower current
 * @param singleStepV    the largest deviation of one step between the limits, for comparison
 * @param course         the pattern
 * @param deviationAtS   when the pattern has its full effect
 * @param warnings       sentences
 */
public record WorstLoad(double deviationV, double singleStepV, LoadCourse course, double deviationAtS, List<String> warnings) {

    public WorstLoad {
        warnings = List.copyOf(warnings);
    }

    /**
     * The same pattern from shortly before its first edge on: a search begins as early as the response is long, which often is a wait.
     *
     * @param lead what stays before the first edge, as a share of the rest
     */
    public WorstLoad fromItsFirstEdge(double lead) {
        LoadCourse shorter = course.fromItsFirstEdge(lead);
        double cutS = course.endS() - shorter.endS();
        return new WorstLoad(deviationV, singleStepV, shorter, deviationAtS - cutS, warnings);
    }
}
