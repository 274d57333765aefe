package org.stillrail.electrical.fit;

import org.stillrail.electrical.capacitor.Require;

/**
 * What a fit aims at.
 *
 * @param tolerance     largest complex error over |Z| to reach, as a fraction
 * @param lossTolerance largest error of Re Z over Re Z to reach where the data's noise lets it be seen, as a fraction
 * @param maxOrder      most poles, 1 to {@link #HIGHEST_ORDER}
 */
public record FitSettings(double tolerance, double lossTolerance, int maxOrder) {

    public static final int HIGHEST_ORDER = 40;

    /** Half of the one per cent that is promised, so that the passivity correction has room; 5 % of Re Z; 24 poles. */
    public static final FitSettings DEFAULT = new FitSettings(0.005, 0.05, 24);

    public FitSettings {
        Require.positive("tolerance", tolerance);
        Require.positive("lossTolerance", lossTolerance);
        if (maxOrder < 1 || maxOrder > HIGHEST_ORDER) {
            throw new IllegalArgumentException("maxOrder must be 1 to " + HIGHEST_ORDER + ", not " + maxOrder);
        }
    }

    public FitSettings withMaxOrder(int order) {
        return new FitSettings(tolerance, lossTolerance, order);
    }
}
