package org.stillrail.electrical.step;

import java.util.Arrays;
import java.util.List;

/**
 * The response to a load step. Arrays are copied on the way out.
 *
 * @param timeS           evenly spaced from 0 to the duration
 * @param deviationV      output voltage less the voltage before the step; where it jumps, the value after the jump, but 0 at
 *                        t = 0
 * @param inductorA       current of all phases together
 * @param undershootV     largest fall of the continuous solution, one-sided limits included, 0 or positive
 * @param overshootV      largest rise likewise
 * @param undershootAtS   when, null where there is no fall
 * @param overshootAtS    when, null where there is no rise
 * @param settledAtS      when the deviation entered the band for good, null if never or if no band was given
 * @param metLimit        whether the duty, or in current mode the inductor's slope, was held at a limit
 * @param fitErrorPercent worst branch, null where the bank is exact
 * @param replaced        labels of branches that an equivalent stands in for
 * @param warnings        sentences
 */
public record StepResult(
        double[] timeS,
        double[] deviationV,
        double[] inductorA,
        double undershootV,
        double overshootV,
        Double undershootAtS,
        Double overshootAtS,
        Double settledAtS,
        boolean metLimit,
        Double fitErrorPercent,
        List<String> replaced,
        List<String> warnings) {

    public StepResult {
        timeS = timeS.clone();
        deviationV = deviationV.clone();
        inductorA = inductorA.clone();
        replaced = List.copyOf(replaced);
        warnings = List.copyOf(warnings);
    }

    /** The deviation at any time, straight between the samples; null outside of them. */
    public Double deviationAt(double atS) {
        for (int i = 1; i < timeS.length; i++) {
            if (timeS[i - 1] <= atS && atS <= timeS[i]) {
                return deviationV[i - 1] + (deviationV[i] - deviationV[i - 1]) * (atS - timeS[i - 1]) / (timeS[i] - timeS[i - 1]);
            }
        }
        return null;
    }

    /** The same response with other extrema. */
    public StepResult withExtrema(double newUndershootV, double newOvershootV) {
        return new StepResult(timeS, deviationV, inductorA, newUndershootV, newOvershootV, undershootAtS, overshootAtS, settledAtS,
                metLimit, fitErrorPercent, replaced, warnings);
    }

    StepResult withWarnings(List<String> newWarnings) {
        return new StepResult(timeS, deviationV, inductorA, undershootV, overshootV, undershootAtS, overshootAtS, settledAtS, metLimit,
                fitErrorPercent, replaced, newWarnings);
    }

    /**
     * The response to the way back where nothing met a limit: the equations are linear, so every deviation has the other sign. Without
     * warnings.
     *
     * @param fromA the load before this response
     * @param toA   and after it
     */
    StepResult mirrored(double fromA, double toA) {
        double[] mirroredV = Arrays.stream(deviationV).map(v -> 0 - v).toArray();
        double[] mirroredA = Arrays.stream(inductorA).map(current -> toA - (current - fromA)).toArray();
        return new StepResult(timeS, mirroredV, mirroredA, overshootV, undershootV, overshootAtS, undershootAtS, settledAtS, metLimit,
                fitErrorPercent, replaced, List.of());
    }

    @Override
    public double[] timeS() {
        return timeS.clone();
    }

    @Override
    public double[] deviationV() {
        return deviationV.clone();
    }

    @Override
    public double[] inductorA() {
        return inductorA.clone();
    }
}
