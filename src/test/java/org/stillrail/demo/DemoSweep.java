package org.stillrail.demo;

import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * One file of the demo.
 *
 * @param sample what was measured, under the conditions it was measured at
 * @param remark what the operator typed at the instrument
 */
record DemoSweep(String file, Specimen sample, SweepGrid grid, Bench bench, SweepFormat format, long seed,
        String remark) {

    static final String ORIGIN = "Synthetic data of the Stillrail demo; no such part exists";

    List<Reading> readings() {
        return Reading.sweep(sample, grid, bench, seed);
    }

    byte[] content() {
        return format.write(List.of(ORIGIN, remark), readings(), bench).getBytes(StandardCharsets.US_ASCII);
    }
}
