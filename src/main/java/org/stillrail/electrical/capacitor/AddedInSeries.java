package org.stillrail.electrical.capacitor;

/**
 * A model taken apart into one that bias, temperature and age have not bent, and what they put in series with it:
 * {@code Z = Zbase + addedOhm + addedPerF / (j w)}. So what is known of the base, such as its rational fit, serves at every corner.
 *
 * @param base       neither {@link BentModel} nor {@link ShiftedResistance}
 * @param addedOhm   of either sign
 * @param addedPerF  elastance in 1/F, of either sign
 */
public record AddedInSeries(ImpedanceModel base, double addedOhm, double addedPerF) {

    public static AddedInSeries to(ImpedanceModel model) {
        if (model instanceof BentModel bent) {
            AddedInSeries inner = to(bent.inner());
            return new AddedInSeries(inner.base, inner.addedOhm, inner.addedPerF + bent.addedPerF());
        }
        if (model instanceof ShiftedResistance shifted) {
            AddedInSeries inner = to(shifted.inner());
            return new AddedInSeries(inner.base, inner.addedOhm + shifted.addedOhm(), inner.addedPerF);
        }
        return new AddedInSeries(model, 0, 0);
    }

    public boolean nothing() {
        return addedOhm == 0 && addedPerF == 0;
    }
}
