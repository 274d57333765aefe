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
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Optimal parallel damping. */
class OptimalDampingTest {

    private static final Source ERICKSON = Source.fromMemory(
            "R. W. Erickson, Optimal single resistor damping of input filters, APEC 1999; recomputed by a search over R and f in scipy");
    private static final Source EXAMPLE = Source.fromMemory(
            "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, buck example of the input-filter chapter");

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
        Check.that(Topic.DAMPING, "Bulk of n = " + n + " times the ceramics: best R / R0, peak / R0, frequency of the peak / f0")
                .source(ERICKSON).expected("", resistance, peak, frequency).relative(1e-9)
                .got(best.resistanceOhm(), best.peakOhm(), best.peakHz() * 2 * Math.PI);
        assertThat(best.bulkF()).isEqualTo(n);
    }

    /** OD-02, recalled as 0.84 ohm, 2.5, 1200 uF and 0.67 ohm. */
    @Test
    void leastBulkForAPeak() {
        OptimalDamping design = OptimalDamping.ofPeak(330e-6, 470e-6, 1);
        Check.that(Topic.DAMPING, "Least bulk for a peak of 1 ohm, 330 uH and 470 uF: R0, best R, peak").source(EXAMPLE)
                .expected("ohm", 0.8379305815963922, 0.6657406028527022, 1).relative(1e-9)
                .got(design.characteristicOhm(), design.resistanceOhm(), design.peakOhm());
        Check.that(Topic.DAMPING, "Least bulk for a peak of 1 ohm, 330 uH and 470 uF: ratio").source(EXAMPLE)
                .expected("", 2.5191290048236654).relative(1e-9).got(design.ratio());
        Check.that(Topic.DAMPING, "Least bulk for a peak of 1 ohm, 330 uH and 470 uF: bulk").source(EXAMPLE)
                .expected("F", 0.0011839906322671228).relative(1e-9).got(design.bulkF());
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
        Check.that(Topic.DAMPING, "Peak of the circuit itself at the best resistance, n " + ratio + ", 1 uH and 100 uF").source(ERICKSON)
                .expected("ohm", best.peakOhm()).relative(1e-8).got(present.peakOhm());
        assertThat(present.peakHz()).isCloseTo(best.peakHz(), withPercentage(1e-3));
        assertThat(present.timesBest()).isCloseTo(1, withPercentage(1e-6));
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
    void bothGroupsAreNeeded() {
        assertThatThrownBy(() -> PresentDamping.of(filter(3, 0.1), Set.of(), 1e-6)).hasMessageContaining("no ceramics");
        assertThatThrownBy(() -> PresentDamping.of(filter(3, 0.1), Set.of(0, 1), 1e-6)).hasMessageContaining("no bulk");
    }
}
