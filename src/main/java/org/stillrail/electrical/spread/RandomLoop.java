package org.stillrail.electrical.spread;

import java.util.Objects;
import org.stillrail.electrical.capacitor.Require;
import org.stillrail.electrical.converter.Converter;
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
        double low = Math.min(crossoverHz, wantedHz == null ? crossoverHz : wantedHz) / REACH;
        double high = Math.max(crossoverHz, wantedHz == null ? crossoverHz : wantedHz) * REACH;
        return FrequencyGrid.logSpaced(low, high, 1 + (int) Math.ceil(POINTS_PER_DECADE * Math.log10(high / low)));
    }

    Converter with(double inductorFactor) {
        return converter.withInductanceTimes(inductorFactor);
    }
}
