package org.stillrail.demo;

/**
 * A coupon with a standard in it: a little resistance and inductance in series with whatever is soldered to it, and a little
 * capacitance across.
 *
 * @param loadOhm 0 for a short, infinite for an open
 */
record FixtureStandard(double loadOhm) implements Specimen {

    private static final double SERIES_OHM = 0.22e-3;
    private static final double SERIES_H = 48e-12;
    private static final double ACROSS_F = 1.3e-12;

    @Override
    public Phasor impedance(double hz) {
        double omega = 2 * Math.PI * hz;
        Phasor series = new Phasor(SERIES_OHM, omega * SERIES_H);
        if (loadOhm == 0) {
            return series;
        }
        return series.plus(Phasor.ONE.over(new Phasor(1 / loadOhm, omega * ACROSS_F)));
    }
}
