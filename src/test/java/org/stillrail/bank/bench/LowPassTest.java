package org.stillrail.bank.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Against closed forms of a first-order low-pass. */
class LowPassTest {

    private static final double BANDWIDTH_HZ = 1e6;

    @Test
    void aRampLagsByOneTimeConstant() {
        double[] time = {0, 2e-6, 5e-6};
        double[] filtered = LowPass.of(time, new double[] {0, 2, 5}, BANDWIDTH_HZ);
        double tau = 1 / (2 * Math.PI * BANDWIDTH_HZ);
        for (int i = 0; i < time.length; i++) {
            double expected = 1e6 * (time[i] - tau + tau * Math.exp(-time[i] / tau));
            assertThat(filtered[i]).isCloseTo(expected, within(1e-12));
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
        assertThat(highest).isCloseTo(Math.sqrt(0.5), within(1e-5));
        assertThat(filtered[n]).isCloseTo(filtered[0], within(1e-9));
    }
}
