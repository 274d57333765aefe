package org.stillrail.demo;

import java.util.ArrayList;
import java.util.List;

/** What the instrument reported at one frequency, and the impedance without noise. */
record Reading(double hz, Phasor reported, Phasor truth) {

    static List<Reading> sweep(Specimen sample, SweepGrid grid, Bench bench, long seed) {
        InstrumentNoise noise = new InstrumentNoise(seed);
        List<Reading> readings = new ArrayList<>();
        for (double hz : grid.frequenciesHz()) {
            Phasor z = sample.impedance(hz);
            readings.add(new Reading(hz, bench.read(z, noise), z));
        }
        return readings;
    }
}
