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
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class BankExtremaTest {

    private static final Source SEARCH =
            Source.independent("network written out in Python, bounded scalar search and a grid of 2 000 001 points");
    private static final Source THEORY = Source.fromMemory("circuit theory, series R-L-C at resonance");

    /** TZ-03. */
    @Test
    void antiresonanceOfTwoBranchesLiesWhereTheNetworkSaysIt() {
        Bank bank = Banks.of(Banks.branch(1e-5, 0.005, 1e-9), Banks.branch(1e-7, 0.02, 5e-10));
        List<Extremum> found = bank.extrema(1e5, 1e9);
        assertThat(found).extracting(Extremum::kind).containsExactly(Kind.MINIMUM, Kind.MAXIMUM, Kind.MINIMUM);
        Extremum peak = found.get(1);
        Check.that(Topic.IMPEDANCE, "Anti-resonance of 10 uF, 5 mohm, 1 nH beside 100 nF, 20 mohm, 0.5 nH: frequency")
                .source(SEARCH).expected("Hz", 12944801.1).relative(1e-7).got(peak.frequencyHz());
        Check.that(Topic.IMPEDANCE, "Anti-resonance of 10 uF, 5 mohm, 1 nH beside 100 nF, 20 mohm, 0.5 nH: |Z|")
                .source(SEARCH).expected("ohm", 0.270827318).relative(1e-8).got(peak.magnitudeOhm());
        double atCross = Math.sqrt(bank.at(13059759.790973771).squaredMagnitude());
        Check.that(Topic.IMPEDANCE, "The same bank where both reactances are equal and opposite: |R1 R2 + X^2 + jX (R2 - R1)| / (R1 + R2)")
                .source(Source.fromMemory("circuit theory")).expected("ohm", 0.2697885110837453).relative(1e-9).got(atCross);
    }

    /** TZ-04. */
    @Test
    void lowQPairHasOneMaximumBetweenItsSelfResonances() {
        Bank bank = Banks.of(Banks.branch(1e-4, 0.01, 3e-9), Banks.branch(1e-5, 0.004, 1e-9));
        List<Extremum> maxima = bank.extrema(1e3, 1e9).stream().filter(e -> e.kind() == Kind.MAXIMUM).toList();
        assertThat(maxima).hasSize(1);
        Check.that(Topic.IMPEDANCE, "Low-Q pair, 100 uF, 10 mohm, 3 nH beside 10 uF, 4 mohm, 1 nH: its one maximum, frequency")
                .source(SEARCH).expected("Hz", 768330.284).relative(1e-7).got(maxima.get(0).frequencyHz());
        Check.that(Topic.IMPEDANCE, "Low-Q pair, 100 uF, 10 mohm, 3 nH beside 10 uF, 4 mohm, 1 nH: its one maximum, |Z|")
                .source(SEARCH).expected("ohm", 0.0181017114).relative(1e-8).got(maxima.get(0).magnitudeOhm());
    }

    /** TZ-05. Q of a series circuit is w0 L / R. */
    @Test
    void equalPartsKeepTheirResonanceAndDivideItsImpedance() {
        Bank bank = Banks.of(Banks.branch("eight", 8, new SeriesRlc(2.2e-5, 0.003, 6e-10)));
        List<Extremum> found = bank.extrema(1e4, 1e8);
        assertThat(found).hasSize(1);
        double f0 = 1 / (2 * Math.PI * Math.sqrt(2.2e-5 * 6e-10));
        Check.that(Topic.IMPEDANCE, "Eight parts of 22 uF, 3 mohm, 0.6 nH in parallel: self-resonance, 1 / (2 pi sqrt(LC)) of one")
                .source(THEORY).expected("Hz", 1385265.9713599812).relative(1e-9).got(found.get(0).frequencyHz());
        Check.that(Topic.IMPEDANCE, "Eight parts of 22 uF, 3 mohm, 0.6 nH in parallel: |Z| at resonance, R / 8")
                .source(THEORY).expected("ohm", 0.000375).relative(1e-9).got(found.get(0).magnitudeOhm());
        Check.that(Topic.IMPEDANCE, "Eight parts of 22 uF, 3 mohm, 0.6 nH in parallel: Q, w0 L / R")
                .source(THEORY).expected("", 2 * Math.PI * f0 * 6e-10 / 0.003).relative(1e-9).got(found.get(0).qualityFactor());
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
        Check.that(Topic.IMPEDANCE, "Resonance of Q = 100 000, far narrower than the scan: frequency")
                .source(THEORY).expected("Hz", w0 / (2 * Math.PI)).relative(1e-9).got(found.get(0).frequencyHz());
        Check.that(Topic.IMPEDANCE, "Resonance of Q = 100 000, far narrower than the scan: |Z|")
                .source(THEORY).expected("ohm", r).relative(1e-8).got(found.get(0).magnitudeOhm());
        Check.that(Topic.IMPEDANCE, "Resonance of Q = 100 000, far narrower than the scan: Q")
                .source(THEORY).expected("", 1e5).relative(1e-6).got(found.get(0).qualityFactor());
    }

    /**
     * A small sharp branch beside a big one: maximum and minimum lie 2e-4 of the frequency apart, both between two scan
     * points.
     */
    @Test
    void narrowPairOfMinimumAndMaximumIsSeen() {
        Bank bank = Banks.of(Banks.branch(1e-5, 0.01, 2e-9), Banks.branch(1e-12, 1e-3, 5e-6));
        List<Extremum> found = bank.extrema(5e7, 1e8);
        assertThat(found).extracting(Extremum::kind).containsExactly(Kind.MAXIMUM, Kind.MINIMUM);
        Source search = Source.independent("network written out in Python, bounded scalar search");
        Check.that(Topic.IMPEDANCE, "10 uF, 10 mohm, 2 nH beside 1 pF, 1 mohm, 5 uH: maximum and minimum 2e-4 apart, frequencies")
                .source(search).expected("Hz", 71162024.7658, 71176254.3595).relative(1e-7)
                .got(found.get(0).frequencyHz(), found.get(1).frequencyHz());
        Check.that(Topic.IMPEDANCE, "10 uF, 10 mohm, 2 nH beside 1 pF, 1 mohm, 5 uH: maximum and minimum 2e-4 apart, |Z|")
                .source(search).expected("ohm", 72.6719281, 9.99986245e-4).relative(1e-8)
                .got(found.get(0).magnitudeOhm(), found.get(1).magnitudeOhm());
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
        Check.that(Topic.IMPEDANCE, "Two branches without loss, 1 uF and 100 nF with 1 nH each: anti-resonance, 1 / (2 pi sqrt((L1 + L2) C1 C2 / (C1 + C2)))")
                .source(Source.fromMemory("circuit theory")).expected("Hz", 1 / (2 * Math.PI * Math.sqrt(2e-9 * c))).relative(1e-9)
                .got(found.get(1).frequencyHz());
    }
}
