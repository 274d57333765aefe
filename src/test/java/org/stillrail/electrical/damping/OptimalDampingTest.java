package org.stillrail.electrical.damping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Banks;

/** Optimal parallel damping; equations from memory, the table recomputed by a search over R and frequency in scipy. */
class OptimalDampingTest {

    /** OD-01, with L and C of 1. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 2.4720661623652207, 4.47213595499958, 0.894427190999916",
        "1, 1.449137674618944, 2.449489742783178, 0.816496580927726",
        "2, 0.9128709291752769, 1.4142135623730951, 0.7071067811865476",
        "2.52, 0.7943443264450547, 1.193118760188326, 0.6651901052377394",
        "4, 0.6123724356957945, 0.8660254037844386, 0.5773502691896257",
        "10, 0.38172540616821105, 0.4898979485566356, 0.408248290463863"})
    void bestResistanceOfARatio(double n, double resistance, double peak, double frequency) {
        OptimalDamping best = OptimalDamping.ofRatio(1, 1, n);
        assertThat(best.resistanceOhm()).isCloseTo(resistance, withPercentage(1e-9));
        assertThat(best.peakOhm()).isCloseTo(peak, withPercentage(1e-9));
        assertThat(best.peakHz() * 2 * Math.PI).isCloseTo(frequency, withPercentage(1e-9));
        assertThat(best.bulkF()).isEqualTo(n);
    }

    /** OD-02: 330 uH, 470 uF, 1 ohm; a textbook's example, recalled as 0.84 ohm, 2.5, 1200 uF and 0.67 ohm. */
    @Test
    void leastBulkForAPeak() {
        OptimalDamping design = OptimalDamping.ofPeak(330e-6, 470e-6, 1);
        assertThat(design.characteristicOhm()).isCloseTo(0.8379305815963922, withPercentage(1e-9));
        assertThat(design.ratio()).isCloseTo(2.5191290048236654, withPercentage(1e-9));
        assertThat(design.bulkF()).isCloseTo(0.0011839906322671228, withPercentage(1e-9));
        assertThat(design.resistanceOhm()).isCloseTo(0.6657406028527022, withPercentage(1e-9));
        assertThat(design.peakOhm()).isCloseTo(1, withPercentage(1e-9));
    }

    private static Bank filter(double ratio, double resistance) {
        return Banks.of(Banks.branch(1e-4, 0, 0), Banks.branch(ratio * 1e-4, resistance, 0));
    }

    /** The circuit itself peaks where and as high as the closed form says. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 2.5, 10})
    void bankAtTheOptimumPeaksAsPromised(double ratio) {
        OptimalDamping best = OptimalDamping.ofRatio(1e-6, 1e-4, ratio);
        PresentDamping present = PresentDamping.of(filter(ratio, best.resistanceOhm()), Set.of(0), 1e-6);
        assertThat(present.optimum().ratio()).isCloseTo(ratio, withPercentage(1e-9));
        assertThat(present.peakOhm()).isCloseTo(best.peakOhm(), withPercentage(1e-6));
        assertThat(present.peakHz()).isCloseTo(best.peakHz(), withPercentage(1e-3));
        assertThat(present.sentence()).contains("about that");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.7, 0.95, 1.05, 1.5, 4})
    void anyOtherResistancePeaksHigher(double share) {
        OptimalDamping best = OptimalDamping.ofRatio(1e-6, 1e-4, 3);
        PresentDamping present = PresentDamping.of(filter(3, share * best.resistanceOhm()), Set.of(0), 1e-6);
        assertThat(present.peakOhm()).isGreaterThan(best.peakOhm());
        assertThat(present.bulkOhm()).isCloseTo(share * best.resistanceOhm(), withPercentage(1e-9));
    }

    @Test
    void whereTheBankLiesIsSaid() {
        OptimalDamping best = OptimalDamping.ofRatio(1e-6, 1e-4, 3);
        assertThat(PresentDamping.of(filter(3, 1.26 * best.resistanceOhm()), Set.of(0), 1e-6).sentence()).contains("more than that");
        assertThat(PresentDamping.of(filter(3, 0.79 * best.resistanceOhm()), Set.of(0), 1e-6).sentence()).contains("less than that");
    }

    @Test
    void bothGroupsAreNeeded() {
        assertThatThrownBy(() -> PresentDamping.of(filter(3, 0.1), Set.of(), 1e-6)).hasMessageContaining("no ceramics");
        assertThatThrownBy(() -> PresentDamping.of(filter(3, 0.1), Set.of(0, 1), 1e-6)).hasMessageContaining("no bulk");
    }
}
