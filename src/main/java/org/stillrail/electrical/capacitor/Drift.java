package org.stillrail.electrical.capacitor;

/**
 * What the end of life is, as a datasheet defines it: capacitance down, ESR up.
 *
 * @param capacitanceShare what is left of the capacitance, above 0
 * @param resistanceFactor ESR over its first value, above 0
 */
public record Drift(double capacitanceShare, double resistanceFactor) {

    public static final Drift NONE = new Drift(1, 1);

    public Drift {
        Require.positive("capacitanceShare", capacitanceShare);
        Require.positive("resistanceFactor", resistanceFactor);
    }
}
