package org.stillrail.electrical.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/** Expected values worked out by hand. */
class SampleSpreadTest {

    @Test
    void repeatsOfASampleCountOnce() {
        Map<String, List<Double>> samples = new LinkedHashMap<>();
        samples.put("A", List.of(10.0, 12.0, 11.0));
        samples.put("B", List.of(14.0));
        SampleSpread spread = SampleSpread.of("ESR", "ohm", samples);
        assertThat(spread.samples()).isEqualTo(2);
        assertThat(spread.repeats()).isEqualTo(4);
        assertThat(spread.median()).isEqualTo(12.5);
        assertThat(spread.lowest()).isEqualTo(11);
        assertThat(spread.spreadPercent()).isEqualTo(24);
        assertThat(spread.repeatPercent()).isCloseTo(100 * 2 / 11.0, within(1e-12));
    }

    @Test
    void aSampleFarOffTheOthersIsNamed() {
        Map<String, List<Double>> samples = new LinkedHashMap<>(
                Map.of("A", List.of(10.0), "B", List.of(10.2), "C", List.of(9.9), "D", List.of(10.1), "E", List.of(14.0)));
        assertThat(SampleSpread.of("C", "F", samples).outliers()).containsExactly("E");
        samples.put("E", List.of(10.3));
        assertThat(SampleSpread.of("C", "F", samples).outliers()).isEmpty();
    }

    @Test
    void threeSamplesDoNotTellWhichIsOff() {
        assertThat(SampleSpread.of("C", "F", Map.of("A", List.of(10.0), "B", List.of(10.0), "C", List.of(99.0))).outliers()).isEmpty();
    }

    @Test
    void theAverageStandsOnTheCommonRange() {
        Curve one = new Curve(FrequencyGrid.of(1, 10, 100), new double[] {1, 2, 3}, new double[] {-3, -2, -1});
        Curve other = new Curve(FrequencyGrid.of(10, 100, 1000), new double[] {4, 5, 6}, new double[] {-4, -3, -2});
        Curve mean = CurveAverage.of(List.of(one, other));
        assertThat(mean.grid().toArray()).containsExactly(10, 100);
        assertThat(mean.reals()).containsExactly(3, 4);
        assertThat(mean.imaginaries()).containsExactly(-3, -2);
        Curve apart = new Curve(FrequencyGrid.of(1e6, 1e7), new double[2], new double[2]);
        assertThatThrownBy(() -> CurveAverage.of(List.of(one, apart))).hasMessageContaining("no range");
    }
}
