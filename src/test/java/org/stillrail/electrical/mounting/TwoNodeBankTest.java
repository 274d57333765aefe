package org.stillrail.electrical.mounting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.ejml.data.Complex_F64;
import org.ejml.data.ZMatrixRMaj;
import org.ejml.dense.row.CommonOps_ZDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.Node;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/** Banks at two nodes against series and parallel sums by hand and against the nodal equations solved as a matrix. */
class TwoNodeBankTest {

    private static final Branch BULK = Banks.branch(4.7e-4, 0.012, 3e-9);
    private static final Branch CERAMIC = Banks.branch(2.2e-5, 0.003, 7e-10);
    private static final Branch SMALL = Banks.branch(1e-6, 0.01, 4e-10);
    private static final SeriesPath PLANE = new SeriesPath(0.002, 1.5e-9);
    private static final TwoNodeBank BOTH = new TwoNodeBank(List.of(BULK, CERAMIC), List.of(SMALL), PLANE, 2e-8);

    private static Complex z(Branch branch, double hz) {
        return new Complex(branch.at(hz).resistanceOhm(), branch.at(hz).reactanceOhm());
    }

    private static Complex parallel(Complex a, Complex b) {
        return a.times(b).over(a.plus(b));
    }

    private static void same(Complex actual, Complex expected, double share) {
        assertThat(actual.minus(expected).magnitude()).isLessThanOrEqualTo(share * expected.magnitude());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e2, 1e4, 3e5, 1e6, 2e7, 1e8})
    void seriesAndParallelByHand(double hz) {
        double omega = 2 * Math.PI * hz;
        Complex near = parallel(z(BULK, hz), z(CERAMIC, hz));
        Complex far = parallel(z(SMALL, hz), new Complex(0, -1 / (omega * 2e-8)));
        Complex path = new Complex(0.002, omega * 1.5e-9);
        TwoNodePoint point = BOTH.at(hz);
        same(point.atConverter(), parallel(near, path.plus(far)), 1e-12);
        same(point.atLoad(), parallel(far, path.plus(near)), 1e-12);
        // One ampere into the converter's node: its voltage, divided between the path and the far side.
        same(point.transfer(), parallel(near, path.plus(far)).times(far.over(path.plus(far))), 1e-12);
        same(point.transfer(), parallel(far, path.plus(near)).times(near.over(path.plus(near))), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e3, 1e5, 2e6, 5e7})
    void seenFromANodeItIsABank(double hz) {
        for (Node node : Node.values()) {
            Bank bank = BOTH.seenFrom(node);
            Curve curve = bank.on(FrequencyGrid.of(hz)).bank();
            Complex expected = node == Node.LOAD ? BOTH.at(hz).atLoad() : BOTH.at(hz).atConverter();
            same(new Complex(curve.real(0), curve.imaginary(0)), expected, 1e-11);
            same(new Complex(bank.at(hz).resistanceOhm(), bank.at(hz).reactanceOhm()), expected, 1e-11);
        }
    }

    @Test
    void pathOfNothingMakesOneNode() {
        TwoNodeBank joined = new TwoNodeBank(List.of(BULK), List.of(CERAMIC), SeriesPath.NONE, 0);
        Bank bank = Banks.of(BULK, CERAMIC);
        for (double hz : new double[] {1e3, 1e5, 1e7}) {
            Complex expected = new Complex(bank.at(hz).resistanceOhm(), bank.at(hz).reactanceOhm());
            same(joined.at(hz).atConverter(), expected, 1e-12);
            same(joined.at(hz).atLoad(), expected, 1e-12);
            same(joined.at(hz).transfer(), expected, 1e-12);
        }
    }

    @Test
    void longPathPartsTheNodes() {
        TwoNodeBank parted = new TwoNodeBank(List.of(BULK), List.of(CERAMIC), new SeriesPath(1e6, 0), 0);
        same(parted.at(1e5).atLoad(), z(CERAMIC, 1e5), 1e-6);
        same(parted.at(1e5).atConverter(), z(BULK, 1e5), 1e-6);
        assertThat(parted.at(1e5).transfer().magnitude()).isLessThan(1e-8);
    }

    @Test
    void everythingMayStandAtOneEnd() {
        TwoNodeBank atLoad = new TwoNodeBank(List.of(), List.of(BULK), PLANE, 0);
        double omega = 2 * Math.PI * 1e5;
        same(atLoad.at(1e5).atLoad(), z(BULK, 1e5), 1e-12);
        same(atLoad.at(1e5).transfer(), z(BULK, 1e5), 1e-12);
        same(atLoad.at(1e5).atConverter(), z(BULK, 1e5).plus(new Complex(0.002, omega * 1.5e-9)), 1e-12);
        assertThat(atLoad.seenFrom(Node.LOAD).branches()).hasSize(1);
        assertThatThrownBy(() -> new TwoNodeBank(List.of(), List.of(), PLANE, 0)).hasMessageContaining("at least one branch");
    }

    /** Unknowns: both voltages and the inductor's current, one ampere drawn at the load, with the sense point at either node. */
    @ParameterizedTest
    @ValueSource(doubles = {1e3, 2e4, 6e4, 3e5, 4e6})
    void closedLoopIsThatOfTheNodalEquations(double hz) {
        double omega = 2 * Math.PI * hz;
        Complex gain = new Complex(3, -40e3 / hz);
        Complex source = new Complex(0.004, omega * 1e-6);
        Complex path = new Complex(0.002, omega * 1.5e-9);
        Complex near = z(BULK, hz).reciprocal().plus(z(CERAMIC, hz).reciprocal());
        Complex far = z(SMALL, hz).reciprocal().plus(new Complex(0, omega * 2e-8));
        Complex link = path.reciprocal();
        for (Node sense : Node.values()) {
            Complex none = Complex.ZERO;
            Complex[][] rows = {
                {near.plus(link), link.times(-1), new Complex(-1, 0)},
                {link.times(-1), far.plus(link), none},
                {Complex.ONE.plus(sense == Node.CONVERTER ? gain : none), sense == Node.LOAD ? gain : none, source}};
            Complex loadV = solve(rows, new Complex[] {none, new Complex(-1, 0), none})[1];
            same(BOTH.at(hz).closedAtLoad(sense, gain, source), loadV.times(-1), 1e-9);
        }
    }

    @Test
    void withoutGainTheLoopIsOpen() {
        Complex source = new Complex(0.004, 0.6);
        TwoNodePoint point = BOTH.at(1e5);
        Complex sensedAtConverter = point.closedAtLoad(Node.CONVERTER, Complex.ZERO, source);
        same(point.closedAtLoad(Node.LOAD, Complex.ZERO, source), sensedAtConverter, 1e-12);
        assertThat(point.loopGain(Node.LOAD, Complex.ZERO, source).magnitude()).isZero();
    }

    /** 1 F, 2 H and 1 F in a ring: resonance at 1 rad/s, without loss. */
    @Test
    void losslessResonanceIsRefusedAndNamed() {
        TwoNodeBank ring = new TwoNodeBank(List.of(Banks.branch(1, 0, 0)), List.of(), new SeriesPath(0, 2), 1);
        double hz = 1 / (2 * Math.PI);
        assertThatThrownBy(() -> ring.at(hz)).hasMessageContaining("without loss").hasMessageContaining(String.valueOf(hz));
        assertThat(ring.at(hz * 1.001).atLoad().magnitude()).isGreaterThan(100);
    }

    @Test
    void extremaOfTheLoadAreFound() {
        TwoNodeBank ringing = new TwoNodeBank(List.of(BULK), List.of(), new SeriesPath(1e-4, 20e-9), 4e-6);
        assertThat(ringing.seenFrom(Node.LOAD).extrema(1e4, 1e7))
                .anySatisfy(peak -> assertThat(peak.frequencyHz())
                        .isCloseTo(1 / (2 * Math.PI * Math.sqrt(23e-9 * 4e-6)), withPercentage(2)));
    }

    private static Complex[] solve(Complex[][] rows, Complex[] right) {
        int n = right.length;
        ZMatrixRMaj a = new ZMatrixRMaj(n, n);
        ZMatrixRMaj b = new ZMatrixRMaj(n, 1);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                a.set(i, j, rows[i][j].re(), rows[i][j].im());
            }
            b.set(i, 0, right[i].re(), right[i].im());
        }
        ZMatrixRMaj x = new ZMatrixRMaj(n, 1);
        assertThat(CommonOps_ZDRM.solve(a, b, x)).isTrue();
        Complex[] solution = new Complex[n];
        for (int i = 0; i < n; i++) {
            Complex_F64 value = new Complex_F64();
            x.get(i, 0, value);
            solution[i] = new Complex(value.real, value.imaginary);
        }
        return solution;
    }
}
