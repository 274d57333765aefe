package org.stillrail.electrical.capacitor;

import java.util.List;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * The impedance of one part at one operating point, as a function of frequency. Implementations are immutable values.
 */
public interface ImpedanceModel {

    /**
     * Adds this impedance to {@code r + jx} at every frequency of the grid; the hot loop of every bank.
     *
     * @param resistanceOhm modified, length {@code grid.size()}
     * @param reactanceOhm  modified, same length
     */
    void addImpedanceTo(FrequencyGrid grid, double[] resistanceOhm, double[] reactanceOhm);

    /** Impedance and slope at one positive frequency; at a knot the slope towards higher frequency. */
    ImpedancePoint at(double hz);

    /**
     * The inductance that the impedance tends to at high frequency, {@code lim X / w}, in H; 0 where there is none.
     * Ripple takes it out of the harmonic sum and adds its voltage step exactly.
     */
    double inductanceAtInfinityH();

    /**
     * The frequencies where the model is known point by point, ascending, empty for a closed form. Extrema are sought
     * at these too. A copy.
     */
    default double[] knotsHz() {
        return new double[0];
    }

    /** The frequencies between which the model rests on data; outside it is extrapolated. */
    default ValidRange validRange() {
        return ValidRange.EVERYWHERE;
    }

    /** What a reader of any answer that rests on this model should know, in sentences; empty when there is nothing. */
    default List<String> warnings() {
        return List.of();
    }
}
