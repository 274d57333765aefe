package org.stillrail.electrical.spread;

import java.util.Objects;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.converter.Converter;
import org.stillrail.electrical.converter.CrossoverBand;
import org.stillrail.electrical.converter.SampledLoop;
import org.stillrail.electrical.curve.FrequencyGrid;

/**
 * The loop that random banks close, with its compensator as it is; only the inductor strays.
 *
 * @param converter   with nominal inductance
 * @param crossoverHz with nothing astray
 * @param wantedHz    the crossover that the compensator was placed for, null where it is given
 * @param spread      how far the band of the sensitivity reaches beyond the crossovers, as a factor
 */
public record RandomLoop(Converter converter, double crossoverHz, Double wantedHz, double spread) {

    private static final int POINTS_PER_DECADE = 100;
    /** A crossover is looked for as far from the nominal one. */
    private static final double REACH = 10;

    public RandomLoop {
        Objects.requireNonNull(converter, "converter");
        Require.positive("crossoverHz", crossoverHz);
        Require.positive("spread", spread);
    }

    /** Where the loop is read: a decade round the nominal crossover, the band in it. */
    FrequencyGrid grid() {
        CrossoverBand reach = CrossoverBand.of(crossoverHz, wantedHz, REACH);
        return FrequencyGrid.logSpaced(reach.lowHz(), reach.highHz(),
                1 + (int) Math.ceil(POINTS_PER_DECADE * Math.log10(reach.highHz() / reach.lowHz())));
    }

    /** As it is with a bank of this admittance on {@link #grid}, and inductors of so many times their nominal value. */
    SampledLoop on(FrequencyGrid grid, double[] conductance, double[] susceptance, double inductorFactor) {
        return SampledLoop.of(converter.withInductanceTimes(inductorFactor), grid, conductance, susceptance, wantedHz, spread);
    }
}
