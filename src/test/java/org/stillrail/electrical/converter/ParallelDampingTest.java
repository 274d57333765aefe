package org.stillrail.electrical.converter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Rows OD-01 and OD-02. */
class ParallelDampingTest {

    private static final Source ERICKSON = Source.fromMemory(
            "R. W. Erickson, Optimal single resistor damping of input filters, APEC 1999; R. D. Middlebrook 1978; recomputed by a search over R and f");
    private static final Source EXAMPLE = Source.fromMemory(
            "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, buck example of the input-filter chapter");

    @Test
    void bestResistancePeakAndFrequency() {
        double[] n = {0.5, 1, 2, 2.52, 4, 10};
        double[] resistance = {2.4720661623652207, 1.449137674618944, 0.9128709291752769, 0.7943443264450547, 0.6123724356957945, 0.38172540616821105};
        double[] peak = {4.47213595499958, 2.449489742783178, 1.4142135623730951, 1.193118760188326, 0.8660254037844386, 0.4898979485566356};
        double[] frequency = {0.894427190999916, 0.816496580927726, 0.7071067811865476, 0.6651901052377394, 0.5773502691896257, 0.408248290463863};
        for (int i = 0; i < n.length; i++) {
            ParallelDamping damping = new ParallelDamping(1e-6, 100e-6, n[i] * 100e-6);
            Check.that(Topic.DAMPING, "Damping branch of n = " + n[i] + " times C: best R / R0, peak / R0, frequency of the peak / f0")
                    .source(ERICKSON).expected("", resistance[i], peak[i], frequency[i]).relative(1e-9)
                    .got(damping.bestResistanceOhm() / damping.characteristicOhm(), damping.bestPeakOhm() / damping.characteristicOhm(),
                            damping.bestPeakHz() / damping.resonanceHz());
        }
    }

    @Test
    void designForAWantedPeak() {
        ParallelDamping damping = ParallelDamping.forPeak(0.00033, 0.00047, 1);
        Check.that(Topic.DAMPING, "330 uH, 470 uF, wanted peak 1 ohm: R0, best R, peak").source(EXAMPLE)
                .expected("ohm", 0.8379305815963922, 0.6657406028527022, 1).absolute(1e-9)
                .got(damping.characteristicOhm(), damping.bestResistanceOhm(), damping.bestPeakOhm());
        Check.that(Topic.DAMPING, "330 uH, 470 uF, wanted peak 1 ohm: f0").source(EXAMPLE)
                .expected("Hz", 404.12361826949257).absolute(1e-6).got(damping.resonanceHz());
        Check.that(Topic.DAMPING, "330 uH, 470 uF, wanted peak 1 ohm: damping capacitance").source(EXAMPLE)
                .expected("F", 0.0011839906322671228).absolute(1e-12).got(damping.dampingCapacitanceF());
    }

    @Test
    void noOtherResistanceDoesBetter() {
        for (double n : new double[] {0.2, 1, 5, 30}) {
            ParallelDamping damping = new ParallelDamping(0.33e-6, 88e-6, n * 88e-6);
            double best = damping.peakOhm(damping.bestResistanceOhm());
            assertEquals(damping.bestPeakOhm(), best, 1e-9 * best);
            for (double factor : new double[] {0.2, 0.8, 0.97, 1.03, 1.25, 5}) {
                assertTrue(damping.peakOhm(factor * damping.bestResistanceOhm()) > best);
            }
        }
        assertEquals(Double.POSITIVE_INFINITY, new ParallelDamping(1e-6, 1e-4, 1e-4).peakOhm(0));
    }
}
