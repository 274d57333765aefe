package org.stillrail.electrical.step;

import java.util.Arrays;
import java.util.List;

/**
 * The load pattern that does worst to a regulated rail, and what it does, in the linear model. The same pattern mirrored about
 * the middle of the currents rises as far as this one falls.
 *
 * @param deviationV     the largest deviation that any load within the current limits and the slew can cause, positive; with a load line, below the rest at the
 *                       lower current
 * @param singleStepV    the largest deviation of one step between the limits, for comparison
 * @param timeS          corners of the pattern, from 0; straight lines between
 * @param loadA          the load's current there, same length
 * @param deviationAtS   when the pattern has its full effect
 * @param warnings       sentences
 */
public record WorstLoad(
        double deviationV, double singleStepV, double[] timeS, double[] loadA, double deviationAtS, List<String> warnings) {

    private static final double STILL = 1e-9;

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

    /**
     * The same pattern from shortly before its first edge on: a search begins as early as the response is long, which often is a wait.
     *
     * @param lead what stays before the first edge, as a share of the rest
     */
    public WorstLoad fromItsFirstEdge(double lead) {
        int edge = 0;
        while (edge + 1 < loadA.length && Math.abs(loadA[edge + 1] - loadA[0]) < STILL * span()) {
            edge++;
        }
        double endS = timeS[timeS.length - 1];
        double startS = timeS[edge] - lead * (endS - timeS[edge]);
        if (edge == 0 || startS <= 0) {
            return this;
        }
        double[] laterS = new double[timeS.length - edge + 1];
        double[] laterA = new double[laterS.length];
        laterA[0] = loadA[0];
        for (int i = 1; i < laterS.length; i++) {
            laterS[i] = timeS[edge + i - 1] - startS;
            laterA[i] = loadA[edge + i - 1];
        }
        return new WorstLoad(deviationV, singleStepV, laterS, laterA, deviationAtS - startS, warnings);
    }

    private double span() {
        return Arrays.stream(loadA).max().orElse(0) - Arrays.stream(loadA).min().orElse(0);
    }
}
