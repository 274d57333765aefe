package org.stillrail.electrical.ripple;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.LosslessResonanceException;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Ripple where a formula is known. */
class RippleClosedFormTest {

    private static final Source TRIANGLE = Source.fromMemory("exact ripple of a triangle in C and ESR, derived piece by piece; recomputed on a time grid");
    private static final Source STEADY_STATE = Source.fromMemory("steady-state waveforms of a buck, any textbook");
    private static final Source FOURIER = Source.fromMemory("Fourier integral of a triangle with unequal slopes; recomputed numerically");

    /** BR-01 and BR-02: a triangular current through C and ESR. */
    @ParameterizedTest
    @CsvSource({
        "2, 500000, 0.25, 0.0001,  0,      0.005,         0.005",
        "2, 500000, 0.25, 0.0001,  0.001,  0.00526666667, 0.007",
        "2, 500000, 0.25, 0.0001,  0.0025, 0.00666666667, 0.01",
        "2, 500000, 0.25, 0.0001,  0.005,  0.0104166667,  0.015",
        "2, 500000, 0.25, 0.0001,  0.01,   0.02,          0.025",
        "3, 300000, 0.5,  4.7e-05, 0.008,  0.0320101447,  0.0505957447",
        "1, 1e6,    0.1,  2.2e-05, 0.004,  0.00730919192, 0.00968181818"})
    void capacitanceWithResistance(double dI, double f, double d, double c, double r, double expected, double sum) {
        Ripple ripple = Ripple.of(Banks.of(Banks.branch(c, r, 0)), triangle(dI, f, d), 500);
        Check.that(Topic.RIPPLE, "Triangle of %s A, %s kHz, D %s in %s uF and %s mohm: ripple, peak to peak"
                        .formatted(dI, f / 1e3, d, (float) (1e6 * c), 1e3 * r))
                .source(TRIANGLE).expected("V", expected).relative(1e-8).got(ripple.peakToPeakV());
        assertThat(ripple.peakToPeakV()).isLessThanOrEqualTo(sum * (1 + 1e-9));
        Check.that(Topic.RIPPLE, "What the capacitance alone makes of a triangle: dI / (8 f C)")
                .source(STEADY_STATE).expected("the closed form in seven cases").relative(1e-9)
                .compare("V", dI / (8 * f * c), ripple.fromCapacitance().peakToPeakV());
        assertThat(ripple.fromResistance().peakToPeakV() + 1).isCloseTo(1 + r * dI, withPercentage(1e-10));
        assertThat(ripple.fromInductance().peakToPeakV()).isZero();
    }

    /** BR-03: 12 V to 3.3 V, 4.7 uH, 500 kHz, 100 uF. */
    @Test
    void buckIntoACapacitance() {
        BuckCurrent buck = new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 1);
        Ripple ripple = Ripple.of(Banks.of(Banks.branch(1e-4, 0, 0)), buck, 100);
        Check.that(Topic.RIPPLE, "Buck 12 V to 3.3 V, 4.7 uH, 500 kHz: inductor ripple Vo (1 - D) / (L f), peak to peak")
                .source(STEADY_STATE).expected("A", 1.0180851063829786).relative(1e-9).got(ripple.inductorPeakToPeakA());
        assertThat(buck.waveform().peakToPeakA()).isCloseTo(1.01808511, withPercentage(1e-6));
        Check.that(Topic.RIPPLE, "Buck 12 V to 3.3 V, 4.7 uH, 500 kHz into 100 uF: dI / (8 f C), peak to peak")
                .source(STEADY_STATE).expected("V", 0.0025452127659574466).relative(1e-8).got(ripple.peakToPeakV());
    }

    /** BR-04: the step of a series inductance is Ls Vin / L, both one-sided limits counted. */
    @Test
    void seriesInductanceAddsItsStep() {
        BuckCurrent buck = new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 1);
        Ripple ripple = Ripple.of(Banks.of(Banks.branch(1e-4, 0.001, 1e-9)), buck, 100);
        Check.that(Topic.RIPPLE, "Step that 1 nH adds where the buck's slope changes: Ls Vin / L")
                .source(Source.fromMemory("derived from v = L di/dt")).expected("V", 0.0025531914893617024).relative(1e-9)
                .got(ripple.fromInductance().peakToPeakV());
        assertThat(ripple.peakToPeakV()).isGreaterThan(0.00255319149);
    }

    /** WF-02: a zero-mean triangle has an rms value of its peak-to-peak over the root of twelve. */
    @Test
    void rmsOfTheTriangleReachesTheOnlyBranch() {
        Branch branch = new Branch("four", 4, new SeriesRlc(2.2e-5, 0.005, 1e-9), new SeriesPath(0.001, 0), new SeriesPath(0.0005, 0));
        Ripple ripple = Ripple.of(Banks.of(branch), triangle(2, 400e3, 0.3), 100);
        BranchRipple only = ripple.branches().get(0);
        Check.that(Topic.RIPPLE, "Triangle of 2 A peak to peak without mean: rms dI / sqrt 12")
                .source(Source.fromMemory("R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, appendix on rms values"))
                .expected("A", 0.5773502691896257).relative(1e-9).got(only.rmsA());
        assertThat(only.perPartRmsA()).isCloseTo(0.577350269 / 4, withPercentage(1e-7));
        assertThat(only.perPartDissipationW()).isCloseTo(0.005 / 12 * 4 / 16, withPercentage(1e-7));
        assertThat(only.mountingDissipationW()).isCloseTo(4 * 0.001 / 12 * 4 / 16, withPercentage(1e-7));
        assertThat(only.sharedDissipationW()).isCloseTo(0.0005 / 3, withPercentage(1e-7));
    }

    /** WF-04: harmonics of a triangle, and their sum of squares. */
    @Test
    void harmonicsOfTheTriangle() {
        double[] re = new double[7];
        double[] im = new double[7];
        triangle(1, 1, 0.1).waveform().harmonics(re, im);
        double[] amplitude = new double[7];
        for (int i = 0; i < 7; i++) {
            amplitude[i] = 2 * Math.hypot(re[i], im[i]);
        }
        Check.that(Topic.RIPPLE, "Harmonics 1 to 7 of a triangle of 1 A, D 0.1: dI |sin n pi D| / (n^2 pi^2 D (1 - D))")
                .source(FOURIER).expected("A", 0.3478885292851923, 0.16543082636050976, 0.10119822155164962, 0.06691817495957171,
                        0.04503163717437234, 0.029741411093142985, 0.018587428448262177).relative(1e-9).got(amplitude);
    }

    /** rms of a voltage that is the resistance times a triangle, and of a square wave made by an inductance. */
    @Test
    void rmsVoltageIsExact() {
        double r = 0.01;
        PeriodicCurrent current = triangle(2, 1e5, 0.5);
        double resistive = Ripple.of(Banks.of(Banks.branch(1e9, r, 0)), current, 10).rmsV();
        Check.that(Topic.RIPPLE, "rms voltage of a triangle in a resistance, R dI / sqrt 12")
                .source(STEADY_STATE).expected("V", r * 2 / Math.sqrt(12)).relative(1e-6).got(resistive);
        double inductive = Ripple.of(Banks.of(Banks.branch(1e9, 0, 1e-9)), current, 10).rmsV();
        Check.that(Topic.RIPPLE, "rms voltage of a triangle in an inductance: that of a square wave")
                .source(STEADY_STATE).expected("V", 1e-9 * 2 * 2 * 1e5).relative(1e-6).got(inductive);
    }

    /** WF-05: from the first harmonic alone the ripple of a capacitance would come out 32 / pi^3 times too high. */
    @Test
    void firstHarmonicAloneOverstatesTheRipple() {
        Ripple ripple = Ripple.of(Banks.of(Banks.branch(1e-5, 0, 0)), triangle(1, 1e6, 0.5), 100);
        double[] re = new double[1];
        double[] im = new double[1];
        triangle(1, 1e6, 0.5).waveform().harmonics(re, im);
        double first = 2 * 2 * Math.hypot(re[0], im[0]) / (2 * Math.PI * 1e6 * 1e-5);
        Check.that(Topic.RIPPLE, "Ripple of the first harmonic alone over the exact one, pure C at D = 0.5: 32 / pi^3")
                .source(Source.fromMemory("Fourier series, derived")).expected("", 1.0320491018623839).relative(1e-8)
                .got(first / ripple.peakToPeakV());
    }

    @Test
    void interleavedPhasesCancelWhereDutyTimesPhasesIsWhole() {
        BuckCurrent buck = new BuckCurrent(12, 4, 1e-6, 500e3, 3);
        Ripple ripple = Ripple.of(Banks.of(Banks.branch(1e-4, 0.01, 1e-9)), buck, 100);
        assertThat(ripple.peakToPeakV()).isZero();
        assertThat(ripple.branches().get(0).rmsA()).isZero();
        assertThat(ripple.inductorPeakToPeakA()).isCloseTo(4 * (1 - 1.0 / 3) / 0.5, withPercentage(1e-9));
    }

    /** The sum of shifted single-phase triangles, added up point by point. */
    @ParameterizedTest
    @CsvSource({"2, 1.2", "2, 3.3", "3, 1.8", "3, 7.5", "5, 3.3"})
    void interleavedSumIsTheSumOfShiftedPhases(int phases, double outputV) {
        PiecewiseLinear one = new BuckCurrent(12, outputV, 1e-6, 500e3, 1).waveform();
        PiecewiseLinear all = new BuckCurrent(12, outputV, 1e-6, 500e3, phases).waveform();
        double period = one.periodS();
        for (int i = 0; i < 97; i++) {
            double t = period * i / 97;
            double sum = 0;
            for (int k = 0; k < phases; k++) {
                double shifted = t - k * period / phases;
                double inside = shifted < 0 ? shifted + period : shifted;
                sum += one.current(one.pieceAt(inside), inside);
            }
            Check.that(Topic.RIPPLE, "Interleaved phases: sum of shifted single-phase triangles, 2 to 5 phases")
                    .source(Source.independent("added up point by point in the test")).expected("the same current at 97 instants in five cases").absolute(1e-9)
                    .compare("A", sum, all.current(all.pieceAt(t), t));
        }
    }

    @Test
    void partsOfTheVoltageAddUpAtEverySample() {
        Bank bank = Banks.of(Banks.branch(2.2e-4, 0.2, 3e-9), Banks.branch(2.2e-5, 0.003, 8e-10));
        Ripple ripple = Ripple.of(bank, new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 1), 400);
        double mean = 0;
        for (int i = 0; i < 400; i++) {
            double sum = ripple.fromCapacitance().voltageV(i) + ripple.fromResistance().voltageV(i)
                    + ripple.fromInductance().voltageV(i);
            assertThat(ripple.voltage().voltageV(i)).isCloseTo(sum, within(1e-12));
            mean += sum / 400;
        }
        assertThat(mean).isCloseTo(0, within(2e-2 * ripple.peakToPeakV()));
    }

    @Test
    void resonanceWithoutLossOnAHarmonicIsRefusedWithItsFrequency() {
        double c = 1e-6;
        double w = 2 * Math.PI * 7e5;
        Bank bank = Banks.of(Banks.branch(c, 0, 1 / (w * w * c)), Banks.branch(1e-5, 0.01, 1e-9));
        assertThatThrownBy(() -> Ripple.of(bank, new BuckCurrent(12, 3.3, 4.7e-6, 1e5, 1), 100))
                .isInstanceOf(LosslessResonanceException.class)
                .hasMessageContaining("700000");
    }

    static PeriodicCurrent triangle(double dI, double f, double d) {
        return PiecewiseLinearCurrent.of(1 / f, new double[] {0, d / f}, new double[] {0, dI});
    }
}
