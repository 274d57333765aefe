package org.stillrail.electrical.converter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class TargetImpedanceTest {

    @Test
    void ratioOfDeviationAndStep() {
        // Rows TZ-01 and TZ-02: 5 % ripple of the rail over the step.
        Source smith = Source.fromMemory(
                "L. D. Smith and others, Power distribution system design methodology, IEEE Trans. Adv. Packaging 22(3), 1999, table 1");
        Source copied = Source.seenSecondHand("formula of the same paper in a public source file");
        double[][] rows = {{5, 1, 0.25}, {3.3, 3.0303030303, 0.05445}, {2.5, 12, 0.0104166667}, {1.8, 50, 0.0018}, {1.2, 150, 0.0004}, {1, 2, 0.025}};
        for (double[] row : rows) {
            Check.that(Topic.STEP, "Target impedance of %s V with 5 %% ripple and a step of %s A".formatted(row[0], row[1]))
                    .source(row[0] == 1 ? copied : smith).expected("ohm", row[2]).relative(1e-8)
                    .got(TargetImpedance.of(0.05 * row[0], row[1], Double.POSITIVE_INFINITY).limitOhm(1e9));
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
