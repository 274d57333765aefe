package org.stillrail.electrical.ripple;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class ConverterCurrentTest {

    private static final BoostCurrent BOOST = new BoostCurrent(5, 12, 10e-6, 400e3, 1, 1, 15e-9);
    private static final InvertingCurrent INVERTING = new InvertingCurrent(12, 5, 10e-6, 400e3, 1, 1.5, 15e-9);
    private static final FlybackCurrent FLYBACK = new FlybackCurrent(24, 5, 60e-6, 4, 200e3, 1, 3, 40e-9);

    private static final Source RMS_TABLE =
            Source.fromMemory("R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, appendix on rms values; recomputed by quadrature");

    static Stream<Arguments> cases() {
        return Stream.of(
                Arguments.of("Boost", BOOST, 0.128684919, 0.0200018414, List.of(0.57063414, 1.09200067)),
                Arguments.of("Inverting buck-boost", INVERTING, 0.121210593, 0.0159787535, List.of(0.43748733, 0.92643503)),
                Arguments.of("Flyback secondary", FLYBACK, 0.161352452, 0.0587075376, List.of(1.92485095, 1.9212944)));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void rippleOfTheOffTimeConverters(String name, ConverterCurrent current, double peakToPeak, double rms, List<Double> branchRms) {
        Bank bank = Banks.of(Banks.branch(1e-4, 0.03, 5e-9), Banks.branch(2e-5, 0.003, 6e-10));
        Ripple ripple = Ripple.of(bank, current, 100);
        Check.that(Topic.RIPPLE, name + " into two branches: ripple, peak to peak")
                .source(RippleStateSpaceTest.PERIODIC_SOLUTION).expected("V", peakToPeak).relative(1e-4).got(ripple.peakToPeakV());
        Check.that(Topic.RIPPLE, name + " into two branches: ripple, rms")
                .source(RippleStateSpaceTest.PERIODIC_SOLUTION).expected("V", rms).relative(1e-4).got(ripple.rmsV());
        Check.that(Topic.RIPPLE, name + " into two branches: current of each, rms")
                .source(RippleStateSpaceTest.PERIODIC_SOLUTION).expected("A", branchRms.get(0), branchRms.get(1)).relative(1e-4)
                .got(ripple.branches().get(0).rmsA(), ripple.branches().get(1).rmsA());
    }

    /** WF-01: edges of no length to speak of. */
    @Test
    void rmsOfTheBoostIsThatOfATrapezoidLessItsMean() {
        BoostCurrent sharp = new BoostCurrent(5, 12, 10e-6, 400e3, 1, 1, 1e-13);
        double off = 5.0 / 12;
        double half = 5 * (1 - off) / (10e-6 * 400e3) / 2;
        double first = 1 / off + half;
        double last = 1 / off - half;
        double square = off * (first * first + first * last + last * last) / 3 - 1;
        Check.that(Topic.RIPPLE, "Boost diode current without its mean: rms of a trapezoid, sqrt(D (I1^2 + I1 I2 + I2^2) / 3)")
                .source(RMS_TABLE).expected("A", Math.sqrt(square)).relative(1e-6).got(sharp.waveform().rmsA());
    }

    /** WF-01, each with edges of 1 fs: a trapezoid from I1 to I2 for the share D of the period. */
    @ParameterizedTest
    @CsvSource({"8, 12, 0.4, 6.366579406033772", "0, 5, 0.3, 1.5811388300841898", "10, 10, 0.25, 5"})
    void rmsOfATrapezoid(double first, double last, double duty, double expected) {
        PiecewiseLinear pulse = pulse(first, last, duty).waveform();
        double mean = duty * (first + last) / 2;
        Check.that(Topic.RIPPLE, "Pulse from %s A to %s A for %s of the period: rms with its mean".formatted(first, last, duty)).source(RMS_TABLE)
                .expected("A", expected).relative(1e-6).got(Math.hypot(pulse.rmsA(), mean));
    }

    /** WF-03, each with edges of 1 fs: current of a buck's input capacitor. */
    @ParameterizedTest
    @CsvSource({"10, 0.25, 3, 4.351723796382303", "5, 0.5, 2, 2.533114025595111", "20, 0.1, 6, 6.024948132556828"})
    void rmsOfABucksInputCurrent(double outputA, double duty, double rippleA, double expected) {
        Check.that(Topic.RIPPLE, "Input current of a buck of %s A, D %s, ripple %s A, without its mean: sqrt(D (1 - D) Io^2 + D dI^2 / 12)"
                        .formatted(outputA, duty, rippleA))
                .source(Source.fromMemory("derived from the mean square of a trapezoid")).expected("A", expected).relative(1e-6)
                .got(pulse(outputA - rippleA / 2, outputA + rippleA / 2, duty).waveform().rmsA());
    }

    private static PiecewiseLinearCurrent pulse(double first, double last, double duty) {
        double period = 1e-6;
        double edge = 1e-15;
        return PiecewiseLinearCurrent.of(period, new double[] {0, edge, duty * period, duty * period + edge}, new double[] {0, first, last, 0});
    }

    /** An inductance makes the spike of its L times the rise over the edge. */
    @Test
    void spikeOfTheInductanceIsItsShareOfTheEdge() {
        Ripple ripple = Ripple.of(Banks.of(Banks.branch(1e-3, 1e-3, 1e-9)), BOOST, 100);
        double off = 5.0 / 12;
        double half = 5 * (1 - off) / (10e-6 * 400e3) / 2;
        double up = (1 / off + half) / 15e-9;
        double down = (1 / off - half) / 15e-9;
        Check.that(Topic.RIPPLE, "Spike of 1 nH under the boost's edges of 15 ns, L times the rise over the edge, both edges")
                .source(Source.fromMemory("circuit theory, v = L di/dt")).expected("V", 1e-9 * (up + down)).relative(1e-8)
                .got(ripple.fromInductance().peakToPeakV());
    }

    @Test
    void interleavedPhasesAddUpAndRippleLess() {
        BoostCurrent two = new BoostCurrent(5, 12, 10e-6, 400e3, 2, 1, 15e-9);
        PiecewiseLinear one = new BoostCurrent(5, 12, 10e-6, 400e3, 1, 0.5, 15e-9).waveform();
        PiecewiseLinear sum = two.waveform();
        double period = one.periodS();
        for (int i = 0; i < 101; i++) {
            double t = period * (i + 0.3) / 101;
            double later = (t + period / 2) % period;
            double expected = one.current(one.pieceAt(t), t) + one.current(one.pieceAt(later), later);
            assertThat(sum.current(sum.pieceAt(t), t)).isCloseTo(expected, within(1e-9));
        }
        Bank bank = Banks.of(Banks.branch(1e-4, 0.01, 0));
        assertThat(Ripple.of(bank, two, 10).peakToPeakV()).isLessThan(Ripple.of(bank, BOOST, 10).peakToPeakV());
    }

    @Test
    void conductionLastsWhileTheLoadIsAboveHalfTheRipple() {
        BuckCurrent buck = new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 2);
        double ripple = 3.3 * (1 - 0.275) / (4.7e-6 * 500e3);
        assertThat(buck.continuousAboveA()).isCloseTo(ripple, withPercentage(1e-9));
        // Boundary conduction: the mean of the inductor is half its ripple, and the load its share of the off time.
        assertThat(BOOST.continuousAboveA()).isCloseTo(5.0 / 12 * BOOST.inductorPeakToPeakA().getAsDouble() / 2, withPercentage(1e-9));
    }

    @Test
    void inputVoltageCanBeChanged() {
        assertThat(BOOST.withInputV(6).duty()).isEqualTo(0.5);
        assertThat(new BuckCurrent(12, 3, 1e-6, 1e6, 1).withInputV(6).duty()).isEqualTo(0.5);
        assertThat(INVERTING.withInputV(5).duty()).isEqualTo(0.5);
        assertThat(FLYBACK.withInputV(20).duty()).isEqualTo(0.5);
    }

    @Test
    void impossibleConvertersAreRefusedByName() {
        assertThatThrownBy(() -> new BuckCurrent(3, 3.3, 1e-6, 1e6, 1)).hasMessageContaining("outputV");
        assertThatThrownBy(() -> new BoostCurrent(12, 5, 1e-6, 1e6, 1, 1, 1e-8)).hasMessageContaining("outputV");
        assertThatThrownBy(() -> new BoostCurrent(5, 12, 1e-6, 1e6, 1, 1, 5e-7)).hasMessageContaining("edgeS");
        assertThatThrownBy(() -> new BuckCurrent(12, 3.3, 1e-6, 1e6, 0)).hasMessageContaining("phases");
        assertThatThrownBy(() -> new FlybackCurrent(24, 5, 0, 4, 2e5, 1, 3, 4e-8)).hasMessageContaining("inductanceH");
    }

    @Test
    void badPiecewiseLinearCurrentsAreRefusedByName() {
        assertThatThrownBy(() -> PiecewiseLinearCurrent.of(1, new double[] {0, 0.5, 0.5}, new double[3]))
                .hasMessageContaining("timeS[2]");
        assertThatThrownBy(() -> PiecewiseLinearCurrent.of(1, new double[] {0.1, 0.5}, new double[2])).hasMessageContaining("timeS[0]");
        assertThatThrownBy(() -> PiecewiseLinearCurrent.of(1, new double[] {0, 1}, new double[] {0, 1})).hasMessageContaining("timeS[1]");
        assertThatThrownBy(() -> PiecewiseLinearCurrent.of(1, new double[] {0, 0.5}, new double[] {0, Double.NaN}))
                .hasMessageContaining("currentA[1]");
        assertThatThrownBy(() -> PiecewiseLinearCurrent.of(0, new double[] {0, 0.5}, new double[2])).hasMessageContaining("periodS");
        assertThat(PiecewiseLinearCurrent.of(1, new double[] {0, 0.5, 1}, new double[] {0, 1, 0}).waveform().pieces()).isEqualTo(2);
    }

    /** Ieq^2 = sum of (In / kf)^2: with a factor that is the same everywhere it divides the rms current. */
    @Test
    void rippleRatingWeighsEachHarmonic() {
        HarmonicCurrents currents = Ripple.of(Banks.of(Banks.branch(1e-4, 0.01, 0)), RippleClosedFormTest.triangle(2, 1e5, 0.5), 10)
                .branches().get(0).perPart();
        assertThat(currents.equivalentA(hz -> 0.5)).isCloseTo(2 * currents.rmsA(), withPercentage(1e-9));
        // A triangle has odd harmonics only, of 1/n^2: all but the first are weighed with 2 here.
        double first = currents.rmsA(1);
        double others = Math.sqrt(currents.rmsA() * currents.rmsA() - first * first);
        assertThat(currents.equivalentA(hz -> hz > 1.5e5 ? 2 : 1)).isCloseTo(Math.hypot(first, others / 2), withPercentage(1e-9));
        Check.that(Topic.RIPPLE, "First harmonic of a symmetric triangle of amplitude 1 A: 8 / pi^2, as rms")
                .source(Source.fromMemory("Fourier series, any textbook")).expected("A", 8 / (Math.PI * Math.PI) / Math.sqrt(2)).relative(1e-9)
                .got(first);
    }
}
