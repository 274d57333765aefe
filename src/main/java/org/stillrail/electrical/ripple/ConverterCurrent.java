package org.stillrail.electrical.ripple;

import java.util.OptionalDouble;

/** The current of a switching converter into its output node. All of them are stated for continuous conduction. */
public sealed interface ConverterCurrent extends PeriodicCurrent permits BuckCurrent, RectifierCurrent {

    /** More phases than any converter has; it bounds the work. */
    int MOST_PHASES = 64;

    double inputV();

    /** The same converter from another input voltage, its output kept. */
    ConverterCurrent withInputV(double newInputV);

    /** Share of the period in which the main switch is on. */
    double duty();

    int phases();

    double switchingHz();

    /** The load current in A of all phases above which the inductors' current never falls to zero. */
    double continuousAboveA();

    /** @throws IllegalArgumentException unless phases is from 1 to {@link #MOST_PHASES} */
    static void checkPhases(int phases) {
        if (phases < 1 || phases > MOST_PHASES) {
            throw new IllegalArgumentException("phases must be 1 to " + MOST_PHASES + ", not " + phases);
        }
    }

    @Override
    default double periodS() {
        return 1 / switchingHz();
    }

    @Override
    default double frequencyHz() {
        return switchingHz();
    }

    @Override
    OptionalDouble inductorPeakToPeakA();
}
