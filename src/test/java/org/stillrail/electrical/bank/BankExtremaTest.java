package org.stillrail.electrical.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.Extremum.Kind;

class BankExtremaTest {

    /** TZ-03, circuit theory, recomputed by bounded search and on a grid of 2 000 001 points; from memory. */
    @Test
    void antiresonanceOfTwoBranchesLiesWhereTheNetworkSaysIt() {
        Bank bank = Banks.of(Banks.branch(1e-5, 0.005, 1e-9), Banks.branch(1e-7, 0.02, 5e-10));
        List<Extremum> found = bank.extrema(1e5, 1e9);
        assertThat(found).extracting(Extremum::kind).containsExactly(Kind.MINIMUM, Kind.MAXIMUM, Kind.MINIMUM);
        Extremum peak = found.get(1);
        assertThat(peak.frequencyHz()).isCloseTo(12944801.1, withPercentage(1e-5));
        assertThat(peak.magnitudeOhm()).isCloseTo(0.270827318, withPercentage(1e-6));
        double atCross = Math.sqrt(bank.at(13059759.8).squaredMagnitude());
        assertThat(atCross).isCloseTo(0.269788511, withPercentage(1e-5));
    }

    /** TZ-04, grid and bounded search; from memory. */
    @Test
    void lowQPairHasOneMaximumBetweenItsSelfResonances() {
        Bank bank = Banks.of(Banks.branch(1e-4, 0.01, 3e-9), Banks.branch(1e-5, 0.004, 1e-9));
        List<Extremum> maxima = bank.extrema(1e3, 1e9).stream().filter(e -> e.kind() == Kind.MAXIMUM).toList();
        assertThat(maxima).hasSize(1);
        assertThat(maxima.get(0).frequencyHz()).isCloseTo(768330.284, withPercentage(1e-5));
        assertThat(maxima.get(0).magnitudeOhm()).isCloseTo(0.0181017114, withPercentage(1e-6));
    }

    /** TZ-05, circuit theory. Q of a series circuit is w0 L / R. */
    @Test
    void equalPartsKeepTheirResonanceAndDivideItsImpedance() {
        Bank bank = Banks.of(Banks.branch("eight", 8, new SeriesRlc(2.2e-5, 0.003, 6e-10)));
        List<Extremum> found = bank.extrema(1e4, 1e8);
        assertThat(found).hasSize(1);
        double f0 = 1 / (2 * Math.PI * Math.sqrt(2.2e-5 * 6e-10));
        assertThat(found.get(0).frequencyHz()).isCloseTo(f0, withPercentage(1e-9));
        assertThat(found.get(0).frequencyHz()).isCloseTo(1385265.97, withPercentage(1e-6));
        assertThat(found.get(0).magnitudeOhm()).isCloseTo(0.000375, withPercentage(1e-10));
        assertThat(found.get(0).qualityFactor()).isCloseTo(2 * Math.PI * f0 * 6e-10 / 0.003, withPercentage(1e-7));
    }

    /** Closed form: Q = w0 L / R and |Z| = R at w0, so narrow that it fits between two scan points many times over. */
    @Test
    void resonanceOfQ100000IsNotMissed() {
        double l = 1e-9;
        double c = 1e-9;
        double w0 = 1 / Math.sqrt(l * c);
        double r = w0 * l / 1e5;
        List<Extremum> found = Banks.of(Banks.branch(c, r, l)).extrema(1e6, 1e9);
        assertThat(found).hasSize(1);
        assertThat(found.get(0).frequencyHz()).isCloseTo(w0 / (2 * Math.PI), withPercentage(1e-9));
        assertThat(found.get(0).magnitudeOhm()).isCloseTo(r, withPercentage(1e-6));
        assertThat(found.get(0).qualityFactor()).isCloseTo(1e5, withPercentage(1e-4));
    }

    /**
     * A small sharp branch beside a big one: maximum and minimum lie 2e-4 of the frequency apart, both between two scan
     * points. Expected: complex network minimised and maximised by a bounded scalar search in Python.
     */
    @Test
    void narrowPairOfMinimumAndMaximumIsSeen() {
        Bank bank = Banks.of(Banks.branch(1e-5, 0.01, 2e-9), Banks.branch(1e-12, 1e-3, 5e-6));
        List<Extremum> found = bank.extrema(5e7, 1e8);
        assertThat(found).extracting(Extremum::kind).containsExactly(Kind.MAXIMUM, Kind.MINIMUM);
        assertThat(found.get(1).frequencyHz()).isCloseTo(71176254.3595, withPercentage(1e-5));
        assertThat(found.get(0).frequencyHz()).isCloseTo(71162024.7658, withPercentage(1e-5));
        assertThat(found.get(1).magnitudeOhm()).isCloseTo(9.99986245e-4, withPercentage(1e-6));
        assertThat(found.get(0).magnitudeOhm()).isCloseTo(72.6719281, withPercentage(1e-6));
    }

    @Test
    void kinkOfATableIsAnExtremumWithTheMeanSlopeOfItsPhase() {
        TableModel table = TableModel.of(new double[] {1e3, 1e4, 1e5}, new double[] {1, 1, 1}, new double[] {-2, -1, -3});
        List<Extremum> found = Banks.of(Banks.branch("table", 1, table)).extrema(2e3, 9e4);
        assertThat(found).hasSize(1);
        Extremum kink = found.get(0);
        assertThat(kink.kind()).isEqualTo(Kind.MINIMUM);
        assertThat(kink.frequencyHz()).isCloseTo(1e4, withPercentage(1e-10));
        assertThat(kink.magnitudeOhm()).isCloseTo(Math.sqrt(2), within(1e-12));
        // dX/df is 1/(ln 10 f) below and -2/(ln 10 f) above; d phase = R dX / |Z|^2.
        double below = 1 / Math.log(10) / 2;
        double above = -2 / Math.log(10) / 2;
        assertThat(kink.qualityFactor()).isCloseTo(Math.abs(below + above) / 2 / 2, within(1e-9));
    }

    /** With R flat and X crossing 0 at a point of the table, the slope of |Z| is 0 there from both sides. */
    @Test
    void resonanceOnAPointOfATableIsSeen() {
        TableModel table = TableModel.of(new double[] {1e3, 1e4, 1e5}, new double[] {1, 1, 1}, new double[] {-2, 0, 3});
        List<Extremum> found = Banks.of(Banks.branch("table", 1, table)).extrema(2e3, 9e4);
        assertThat(found).singleElement().satisfies(minimum -> {
            assertThat(minimum.kind()).isEqualTo(Kind.MINIMUM);
            assertThat(minimum.frequencyHz()).isEqualTo(1e4);
            assertThat(minimum.magnitudeOhm()).isCloseTo(1, within(1e-12));
            assertThat(minimum.qualityFactor()).isCloseTo((2 + 3) / Math.log(10) / 2 / 2, within(1e-6));
        });
    }

    @Test
    void extremumOnTheEdgeIsNotInside() {
        double f0 = 1 / (2 * Math.PI * Math.sqrt(1e-6 * 1e-9));
        Bank bank = Banks.of(Banks.branch(1e-6, 0.01, 1e-9));
        assertThat(bank.extrema(f0, 10 * f0)).isEmpty();
        assertThat(bank.extrema(f0 / 10, f0 * 0.999)).isEmpty();
        assertThat(bank.extrema(f0 / 10, f0 * 1.001)).hasSize(1);
    }

    @Test
    void resonanceExactlyOnAScanPointIsFoundOnce() {
        double f0 = 1 / (2 * Math.PI * Math.sqrt(1e-6 * 1e-9));
        Bank bank = Banks.of(Banks.branch(1e-6, 0.01, 1e-9));
        for (int k = 1; k <= 40; k++) {
            assertThat(bank.extrema(f0 / (1 + 0.1 * k), f0 * (1 + 0.1 * k))).hasSize(1);
        }
    }

    @Test
    void resonanceWithoutLossHasNoFiniteQ() {
        Bank bank = Banks.of(Banks.branch(1e-6, 0, 1e-9), Banks.branch(1e-7, 0, 1e-9));
        List<Extremum> found = bank.extrema(1e5, 1e9);
        assertThat(found).extracting(Extremum::kind).containsExactly(Kind.MINIMUM, Kind.MAXIMUM, Kind.MINIMUM);
        assertThat(found).allSatisfy(e -> assertThat(e.qualityFactor()).isInfinite());
        double c = 1e-6 * 1e-7 / (1e-6 + 1e-7);
        assertThat(found.get(1).frequencyHz()).isCloseTo(1 / (2 * Math.PI * Math.sqrt(2e-9 * c)), withPercentage(1e-9));
    }
}
