package org.stillrail.electrical.converter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TargetImpedanceTest {

    @Test
    void ratioOfDeviationAndStep() {
        // Rows TZ-01 (Smith and others 1999, from memory) and TZ-02 (seen second-hand): 5 % ripple of the rail over the step.
        double[][] rows = {{5, 1, 0.25}, {3.3, 3.0303030303, 0.05445}, {2.5, 12, 0.0104166667}, {1.8, 50, 0.0018}, {1.2, 150, 0.0004}, {1, 2, 0.025}};
        for (double[] row : rows) {
            assertEquals(row[2], TargetImpedance.of(0.05 * row[0], row[1], Double.POSITIVE_INFINITY).limitOhm(1e9), 1e-8 * row[2]);
        }
    }

    @Test
    void aSlowEdgeAllowsMoreAboveItsCorner() {
        TargetImpedance target = TargetImpedance.of(0.03, 10, 1e7);
        assertEquals(1 / (Math.PI * 1e-6), target.cornerHz(), 1e-6);
        assertEquals(3e-3, target.limitOhm(1e5), 1e-12);
        assertEquals(3e-3 * 10e6 * Math.PI * 1e-6, target.limitOhm(10e6), 1e-12);
    }
}
