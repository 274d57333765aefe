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

/** Ripple where a formula is known. Sources: derivations from the waveform, recomputed on a time grid; from memory. */
class RippleClosedFormTest {

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
        assertThat(ripple.peakToPeakV()).isCloseTo(expected, withPercentage(1e-6));
        assertThat(ripple.peakToPeakV()).isLessThanOrEqualTo(sum * (1 + 1e-9));
        assertThat(ripple.fromCapacitance().peakToPeakV()).isCloseTo(dI / (8 * f * c), withPercentage(1e-7));
        assertThat(ripple.fromResistance().peakToPeakV() + 1).isCloseTo(1 + r * dI, withPercentage(1e-10));
        assertThat(ripple.fromInductance().peakToPeakV()).isZero();
    }

    /** BR-03: 12 V to 3.3 V, 4.7 uH, 500 kHz, 100 uF. */
    @Test
    void buckIntoACapacitance() {
        BuckCurrent buck = new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 1);
        Ripple ripple = Ripple.of(Banks.of(Banks.branch(1e-4, 0, 0)), buck, 100);
        assertThat(ripple.inductorPeakToPeakA()).isCloseTo(1.01808511, withPercentage(1e-6));
        assertThat(buck.waveform().peakToPeakA()).isCloseTo(1.01808511, withPercentage(1e-6));
        assertThat(ripple.peakToPeakV()).isCloseTo(0.00254521277, withPercentage(1e-6));
    }

    /** BR-04: the step of a series inductance is Ls Vin / L, both one-sided limits counted. */
    @Test
    void seriesInductanceAddsItsStep() {
        BuckCurrent buck = new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 1);
        Ripple ripple = Ripple.of(Banks.of(Banks.branch(1e-4, 0.001, 1e-9)), buck, 100);
        assertThat(ripple.fromInductance().peakToPeakV()).isCloseTo(0.00255319149, withPercentage(1e-6));
        assertThat(ripple.peakToPeakV()).isGreaterThan(0.00255319149);
    }

    /** WF-02: a zero-mean triangle has an rms value of its peak-to-peak over the root of twelve. */
    @Test
    void rmsOfTheTriangleReachesTheOnlyBranch() {
        Branch branch = new Branch("four", 4, new SeriesRlc(2.2e-5, 0.005, 1e-9), new SeriesPath(0.001, 0), new SeriesPath(0.0005, 0));
        Ripple ripple = Ripple.of(Banks.of(branch), triangle(2, 400e3, 0.3), 100);
        BranchRipple only = ripple.branches().get(0);
        assertThat(only.rmsA()).isCloseTo(0.577350269, withPercentage(1e-7));
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
        double[] expected = {0.347888529, 0.165430826, 0.101198222, 0.066918175, 0.0450316372, 0.0297414111, 0.0185874284};
        for (int i = 0; i < 7; i++) {
            assertThat(2 * Math.hypot(re[i], im[i])).isCloseTo(expected[i], withPercentage(1e-6));
        }
    }

    /** rms of a voltage that is the resistance times a triangle, and of a square wave made by an inductance. */
    @Test
    void rmsVoltageIsExact() {
        double r = 0.01;
        PeriodicCurrent current = triangle(2, 1e5, 0.5);
        double resistive = Ripple.of(Banks.of(Banks.branch(1e9, r, 0)), current, 10).rmsV();
        assertThat(resistive).isCloseTo(r * 2 / Math.sqrt(12), withPercentage(1e-4));
        double inductive = Ripple.of(Banks.of(Banks.branch(1e9, 0, 1e-9)), current, 10).rmsV();
        assertThat(inductive).isCloseTo(1e-9 * 2 * 2 * 1e5, withPercentage(1e-4));
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
            assertThat(all.current(all.pieceAt(t), t)).isCloseTo(sum, within(1e-9));
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
