package org.stillrail.electrical.stress;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * A function of temperature, worked out only at whole kelvins from a first temperature and straight between them: ESR and losses are
 * drawn over tens of kelvins, and each value costs a model. Not for several threads.
 */
final class KelvinSteps implements DoubleUnaryOperator {

    private final double firstC;
    private final DoubleUnaryOperator exact;
    private final Map<Integer, Double> known = new HashMap<>();

    KelvinSteps(double firstC, DoubleUnaryOperator exact) {
        this.firstC = firstC;
        this.exact = exact;
    }

    @Override
    public double applyAsDouble(double temperatureC) {
        int below = (int) Math.floor(temperatureC - firstC);
        double share = temperatureC - firstC - below;
        double low = at(below);
        return share == 0 ? low : low + share * (at(below + 1) - low);
    }

    private double at(int kelvin) {
        return known.computeIfAbsent(kelvin, k -> exact.applyAsDouble(firstC + k));
    }
}
