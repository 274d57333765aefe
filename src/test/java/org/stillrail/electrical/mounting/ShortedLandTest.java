package org.stillrail.electrical.mounting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Sweeps made up of 1.2 mohm and 0.8 nH. */
class ShortedLandTest {

    private static final double[] HZ = FrequencyGrid.logSpaced(1e4, 1e8, 201).toArray();

    private static ShortedLand read(double noise, double shortH) {
        SplittableRandom random = new SplittableRandom(7);
        double[] r = new double[HZ.length];
        double[] x = new double[HZ.length];
        for (int i = 0; i < HZ.length; i++) {
            r[i] = 1.2e-3 * (1 + noise * (random.nextDouble() - 0.5));
            x[i] = 2 * Math.PI * HZ[i] * 0.8e-9 * (1 + noise * (random.nextDouble() - 0.5));
        }
        x[HZ.length - 20] *= 30;
        return ShortedLand.of(HZ, r, x, shortH);
    }

    @Test
    void inductanceAndResistanceComeBack() {
        ShortedLand land = read(0, 0.1e-9);
        assertThat(land.path().inductanceH()).isCloseTo(0.7e-9, withPercentage(1e-9));
        assertThat(land.path().resistanceOhm()).isCloseTo(1.2e-3, withPercentage(1e-9));
        assertThat(land.spreadH()).isLessThan(1e-15);
        assertThat(land.warnings()).isEmpty();
    }

    @Test
    void noiseAndAWildPointDoLittle() {
        ShortedLand land = read(0.1, 0);
        Source planted = Source.independent("the inductance and resistance that the sweep was made of");
        Check.that(Topic.MOUNTING, "Shorted land of 0.8 nH out of a sweep with noise and a wild point").source(planted).expected("H", 0.8e-9).relative(0.02)
                .got(land.path().inductanceH());
        Check.that(Topic.MOUNTING, "Shorted land of 1.2 mohm out of a sweep with noise and a wild point").source(planted).expected("ohm", 1.2e-3).relative(0.02)
                .got(land.path().resistanceOhm());
        assertThat(land.warnings()).singleElement().asString().contains("short itself");
    }

    @Test
    void reactanceOutOfProportionWarns() {
        assertThat(read(0.6, 1e-12).warnings()).anyMatch(warning -> warning.contains("not in proportion"));
    }

    @Test
    void capacitiveSweepIsRefused() {
        double[] minus = new double[HZ.length];
        Arrays.fill(minus, -1);
        assertThatThrownBy(() -> ShortedLand.of(HZ, new double[HZ.length], minus, 0)).hasMessageContaining("reactance above");
        assertThatThrownBy(() -> ShortedLand.of(HZ, new double[3], minus, 0)).hasMessageContaining("equally long");
    }

    @Test
    void shortOfMoreThanTheSweepLeavesNothing() {
        ShortedLand land = read(0, 1e-9);
        assertThat(land.path().inductanceH()).isCloseTo(0, within(0.0));
        assertThat(land.warnings()).anyMatch(warning -> warning.contains("taken as 0"));
    }
}
