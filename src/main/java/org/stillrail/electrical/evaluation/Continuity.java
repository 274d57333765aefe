package org.stillrail.electrical.evaluation;

import java.util.List;
import java.util.Optional;
import org.stillrail.electrical.requirement.RailFigures;
import org.stillrail.electrical.ripple.ConverterCurrent;
import org.stillrail.electrical.ripple.PeriodicCurrent;

/**
 * Whether the inductor's current lasts over the whole period at every load that the rail states: all figures are for continuous
 * conduction, which ends where the mean of the inductor's current is half its ripple.
 *
 * @param lightestA the least load that the rail states
 * @param aboveA    the load from which conduction is continuous at every corner
 * @param worst     the corner that asks for so much
 * @param corners   how many were looked at
 */
record Continuity(double lightestA, double aboveA, Corner worst, int corners) {

    /** Empty for a flyback of unknown turns, and for a drawn current. */
    static Optional<Continuity> of(RailFigures rail, List<Corner> corners) {
        Corner worst = null;
        double above = 0;
        for (Corner corner : corners) {
            Tried<PeriodicCurrent> current = Tried.of(() -> corner.current(rail));
            if (current.answered() && current.value() instanceof ConverterCurrent converter && converter.continuousAboveA() > above) {
                above = converter.continuousAboveA();
                worst = corner;
            }
        }
        return worst == null ? Optional.empty() : Optional.of(new Continuity(lightestA(rail), above, worst, corners.size()));
    }

    /** What all figures hold for. */
    String sentence() {
        return "All figures are for continuous conduction, which ends below a load of " + Words.quantity(aboveA, "A") + Corner.at(worst.name())
                + (corners > 1 ? ", the worst of " + corners + " corners" : "")
                + (kept() ? "." : "; the rail's lightest load of " + Words.quantity(lightestA, "A") + " is under that.");
    }

    /** Empty where the lightest load is enough. */
    Optional<String> warning() {
        return kept() ? Optional.empty() : Optional.of("The load of " + Words.quantity(lightestA, "A") + " is under the "
                + Words.quantity(aboveA, "A") + Corner.at(worst.name()) + ", where half the inductor's ripple is its mean: the figures are for continuous "
                + "conduction and do not hold there unless the rectifier is a switch.");
    }

    private boolean kept() {
        return lightestA >= aboveA;
    }

    /** Of the nominal load and both ends of the load step. */
    private static double lightestA(RailFigures rail) {
        double nominal = rail.nominalCurrentA();
        return rail.loadStep() == null ? nominal : Math.min(nominal, Math.min(rail.loadStep().fromA(), rail.loadStep().toA()));
    }
}
