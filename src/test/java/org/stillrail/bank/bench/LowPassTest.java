package org.stillrail.bank.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Against closed forms of a first-order low-pass. */
class LowPassTest {

    private static final double BANDWIDTH_HZ = 1e6;
    private static final Source FIRST_ORDER = Source.fromMemory("first-order low-pass, any textbook");

    @Test
    void aRampLagsByOneTimeConstant() {
        double[] time = {0, 2e-6, 5e-6};
        double[] filtered = LowPass.of(time, new double[] {0, 2, 5}, BANDWIDTH_HZ);
        double tau = 1 / (2 * Math.PI * BANDWIDTH_HZ);
        for (int i = 0; i < time.length; i++) {
            double expected = 1e6 * (time[i] - tau + tau * Math.exp(-time[i] / tau));
            Check.that(Topic.QUALITY, "Ramp through the oscilloscope's low-pass: t - tau + tau exp(-t / tau)").source(FIRST_ORDER)
                    .expected("the closed form at 3 instants").absolute(1e-12).compare("V", expected, filtered[i]);
        }
    }

    @Test
    void aSineOfTheBandwidthFallsByThreeDecibels() {
        int n = 4000;
        double[] time = new double[n + 1];
        double[] value = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            time[i] = i / (n * BANDWIDTH_HZ);
            value[i] = Math.sin(2 * Math.PI * i / n);
        }
        double[] filtered = LowPass.ofPeriod(time, value, BANDWIDTH_HZ);
        double highest = Arrays.stream(filtered).max().orElseThrow();
        Check.that(Topic.QUALITY, "Sine at the bandwidth through the oscilloscope's low-pass: amplitude 1 / sqrt 2").source(FIRST_ORDER)
                .expected("", Math.sqrt(0.5)).absolute(1e-5).got(highest);
        assertThat(filtered[n]).isCloseTo(filtered[0], within(1e-9));
    }
}
