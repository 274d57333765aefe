package org.stillrail.electrical.evaluation;

import java.util.List;
import java.util.Optional;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.ripple.ConverterCurrent;

/**
 * Whether the inductor's current lasts over the whole period at every load that the rail states: all figures are for continuous
 * conduction, which ends where the mean of the inductor's current is half its ripple.
 */
final class Continuity {

    private Continuity() {
    }

    /** A warning where the lightest load is too light at some corner; empty for a flyback of unknown turns. */
    static Optional<String> warning(RailFigures rail, List<Corner> corners) {
        double load = lightestA(rail);
        Corner worst = null;
        double above = 0;
        for (Corner corner : corners) {
            Tried<ConverterCurrent> current = Tried.of(() -> corner.current(rail));
            if (current.answered() && current.value() != null && current.value().continuousAboveA() > above) {
                above = current.value().continuousAboveA();
                worst = corner;
            }
        }
        return worst == null || load >= above ? Optional.empty() : Optional.of("The load of " + Words.quantity(load, "A") + " is under the "
                + Words.quantity(above, "A") + Corner.at(worst.name()) + ", where half the inductor's ripple is its mean: the figures are for continuous "
                + "conduction and do not hold there unless the rectifier is a switch.");
    }

    /** Of the nominal load and both ends of the load step. */
    private static double lightestA(RailFigures rail) {
        double nominal = rail.nominalCurrentA();
        return rail.loadStep() == null ? nominal : Math.min(nominal, Math.min(rail.loadStep().fromA(), rail.loadStep().toA()));
    }
}
