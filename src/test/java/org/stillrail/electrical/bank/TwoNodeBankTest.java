package org.stillrail.electrical.bank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.ejml.data.Complex_F64;
import org.ejml.data.ZMatrixRMaj;
import org.ejml.dense.row.CommonOps_ZDRM;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.Extremum;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Banks at two nodes against series and parallel sums by hand and against the nodal equations solved as a matrix. */
class TwoNodeBankTest {

    private static final Branch BULK = Banks.branch(4.7e-4, 0.012, 3e-9);
    private static final Branch CERAMIC = Banks.branch(2.2e-5, 0.003, 7e-10);
    private static final Branch SMALL = Banks.branch(1e-6, 0.01, 4e-10);
    private static final SeriesPath PLANE = new SeriesPath(0.002, 1.5e-9);
    private static final SeriesRlc CHIP = new SeriesRlc(2e-8, 0, 0);
    private static final Bank BOTH = bank(PLANE, CHIP, Node.CONVERTER, List.of(BULK, CERAMIC), List.of(SMALL));

    private static Bank bank(SeriesPath path, SeriesRlc load, Node sense, List<Branch> near, List<Branch> far) {
        List<Branch> branches = new ArrayList<>();
        near.forEach(branch -> branches.add(at(branch, Node.CONVERTER)));
        far.forEach(branch -> branches.add(at(branch, Node.LOAD)));
        return new Bank(branches, new Distance(path, sense, load));
    }

    private static Branch at(Branch branch, Node node) {
        return new Branch(branch.label(), branch.count(), branch.part(), branch.mounting(), branch.shared(), node);
    }

    private static final Source BY_HAND = Source.fromMemory("series and parallel sums, current divider");
    private static final Source NODAL = Source.independent("nodal equations solved as a complex matrix (EJML)");

    private static void check(String subject, Source source, Complex actual, Complex expected, double share) {
        Check.that(Topic.MOUNTING, subject + ": error over its size").source(source).expected("the same complex value at each frequency").absolute(share)
                .compare("", 0, actual.minus(expected).magnitude() / expected.magnitude());
    }

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
        TwoNodePoint point = BOTH.nodesAt(hz);
        check("Bank at two nodes, impedance at the converter", BY_HAND, point.atConverter(), parallel(near, path.plus(far)), 1e-12);
        check("Bank at two nodes, impedance at the load", BY_HAND, point.atLoad(), parallel(far, path.plus(near)), 1e-12);
        // One ampere into the converter's node: its voltage, divided between the path and the far side.
        check("Bank at two nodes, transfer impedance", BY_HAND, point.transfer(), parallel(near, path.plus(far)).times(far.over(path.plus(far))), 1e-12);
        same(point.transfer(), parallel(far, path.plus(near)).times(near.over(path.plus(near))), 1e-12);
    }

    /** Curves, single points with their slopes and the view of the converter tell the same. */
    @ParameterizedTest
    @ValueSource(doubles = {1e3, 1e5, 2e6, 5e7})
    void everyViewTellsTheSame(double hz) {
        TwoNodePoint nodes = BOTH.nodesAt(hz);
        Complex[][] expected = {{nodes.atConverter(), nodes.transfer()}, {nodes.transfer(), nodes.atLoad()}};
        for (Node into : Node.values()) {
            for (Node read : Node.values()) {
                BankResponse response = BOTH.response(into, read);
                Complex z = expected[into.ordinal()][read.ordinal()];
                Curve curve = response.on(FrequencyGrid.of(hz)).bank();
                same(new Complex(curve.real(0), curve.imaginary(0)), z, 1e-11);
                ImpedancePoint point = response.at(hz);
                same(new Complex(point.resistanceOhm(), point.reactanceOhm()), z, 1e-11);
                double step = 1e-5 * hz;
                ImpedancePoint above = response.at(hz + step);
                ImpedancePoint below = response.at(hz - step);
                double scale = 1e-6 * (Math.hypot(point.resistanceOhmPerHz(), point.reactanceOhmPerHz()) + z.magnitude() / hz);
                assertThat(point.resistanceOhmPerHz()).isCloseTo((above.resistanceOhm() - below.resistanceOhm()) / (2 * step), within(scale));
                assertThat(point.reactanceOhmPerHz()).isCloseTo((above.reactanceOhm() - below.reactanceOhm()) / (2 * step), within(scale));
            }
        }
        ImpedancePoint seen = BOTH.seenByConverter().at(hz);
        same(new Complex(seen.resistanceOhm(), seen.reactanceOhm()), nodes.atConverter(), 1e-11);
        same(new Complex(BOTH.at(hz).resistanceOhm(), BOTH.at(hz).reactanceOhm()), nodes.atLoad(), 1e-11);
    }

    /** Kirchhoff's current law at the node where the current enters, the path's and the fixed capacitance's share taken from the voltages. */
    @ParameterizedTest
    @ValueSource(doubles = {1e3, 1e5, 2e6, 5e7})
    void sharesAreThoseOfTheCurrentThatEnters(double hz) {
        double omega = 2 * Math.PI * hz;
        Complex path = new Complex(0.002, omega * 1.5e-9);
        for (Node into : Node.values()) {
            BankCurves curves = BOTH.response(into, Node.LOAD).on(FrequencyGrid.of(hz));
            TwoNodePoint nodes = BOTH.nodesAt(hz);
            Complex converterV = into == Node.LOAD ? nodes.transfer() : nodes.atConverter();
            Complex loadV = into == Node.LOAD ? nodes.atLoad() : nodes.transfer();
            Complex near = share(curves, 0).plus(share(curves, 1)).plus(converterV.minus(loadV).over(path));
            same(near, into == Node.CONVERTER ? Complex.ONE : new Complex(0, 0), into == Node.CONVERTER ? 1e-9 : 0, 1e-9);
            Complex far = share(curves, 2).plus(loadV.times(new Complex(0, omega * 2e-8))).plus(loadV.minus(converterV).over(path));
            same(far, into == Node.LOAD ? Complex.ONE : new Complex(0, 0), into == Node.LOAD ? 1e-9 : 0, 1e-9);
            assertThat(BOTH.response(into, Node.LOAD).share(1, hz)).isCloseTo(share(curves, 1).magnitude(), withPercentage(1e-8));
        }
    }

    private static Complex share(BankCurves curves, int branch) {
        return new Complex(curves.shares().get(branch).real(0), curves.shares().get(branch).imaginary(0));
    }

    private static void same(Complex actual, Complex expected, double share, double floor) {
        assertThat(actual.minus(expected).magnitude()).isLessThanOrEqualTo(share * expected.magnitude() + floor);
    }

    /** In steps of the path, ever shorter: all three impedances come to the bank at one node. */
    @Test
    void shortPathMakesOneNode() {
        Bank one = Banks.of(BULK, CERAMIC);
        for (SeriesPath path : List.of(new SeriesPath(1e-15, 0), new SeriesPath(0, 1e-24), new SeriesPath(1e-15, 1e-24))) {
            Bank joined = bank(path, null, Node.LOAD, List.of(BULK), List.of(CERAMIC));
            for (double hz : new double[] {1e3, 1e5, 1e7}) {
                Complex expected = new Complex(one.at(hz).resistanceOhm(), one.at(hz).reactanceOhm());
                same(joined.nodesAt(hz).atConverter(), expected, 1e-9);
                same(joined.nodesAt(hz).atLoad(), expected, 1e-9);
                same(joined.nodesAt(hz).transfer(), expected, 1e-9);
            }
            assertThat(joined.inductanceAtInfinityH()).isCloseTo(one.inductanceAtInfinityH(), withPercentage(1e-6));
        }
        assertThatThrownBy(() -> new Distance(SeriesPath.NONE, Node.LOAD, null)).hasMessageContaining("path");
    }

    @Test
    void longPathPartsTheNodes() {
        Bank parted = bank(new SeriesPath(1e6, 0), null, Node.LOAD, List.of(BULK), List.of(CERAMIC));
        same(parted.nodesAt(1e5).atLoad(), z(CERAMIC, 1e5), 1e-6);
        same(parted.nodesAt(1e5).atConverter(), z(BULK, 1e5), 1e-6);
        assertThat(parted.nodesAt(1e5).transfer().magnitude()).isLessThan(1e-8);
    }

    @Test
    void everythingMayStandAtOneEnd() {
        Bank atLoad = bank(PLANE, null, Node.LOAD, List.of(), List.of(BULK));
        double omega = 2 * Math.PI * 1e5;
        Complex path = new Complex(0.002, omega * 1.5e-9);
        same(atLoad.nodesAt(1e5).atLoad(), z(BULK, 1e5), 1e-12);
        same(atLoad.nodesAt(1e5).transfer(), z(BULK, 1e5), 1e-12);
        same(atLoad.nodesAt(1e5).atConverter(), z(BULK, 1e5).plus(path), 1e-12);
        assertThat(atLoad.inductanceAtInfinityH()).isCloseTo(3e-9, withPercentage(1e-9));
        Bank atConverter = bank(PLANE, null, Node.LOAD, List.of(BULK), List.of());
        same(atConverter.nodesAt(1e5).atLoad(), z(BULK, 1e5).plus(path), 1e-12);
        assertThat(atConverter.inductanceAtInfinityH()).isCloseTo(4.5e-9, withPercentage(1e-9));
        assertThat(atConverter.beyondPath()).isNull();
    }

    /** X over w far above every resonance is the inductance that ripple takes out of its sum. */
    @Test
    void inductanceAtInfinityIsThatOfEachView() {
        Bank bank = bank(PLANE, null, Node.LOAD, List.of(BULK, CERAMIC), List.of(SMALL));
        for (Node into : Node.values()) {
            for (Node read : Node.values()) {
                BankResponse response = bank.response(into, read);
                double hz = 1e12;
                assertThat(response.inductanceAtInfinityH()).isCloseTo(response.at(hz).reactanceOhm() / (2 * Math.PI * hz), withPercentage(1e-4));
            }
        }
    }

    /** Re Zll is the power that one ampere loses, so it is never negative, whatever stands where. */
    @Test
    void loadSeesAPassiveBank() {
        Random random = new Random(7);
        for (int run = 0; run < 200; run++) {
            List<List<Branch>> sides = List.of(new ArrayList<>(), new ArrayList<>());
            for (int k = 0; k < 4; k++) {
                sides.get(random.nextInt(2)).add(Banks.branch(Math.pow(10, -3 - 4 * random.nextDouble()), Math.pow(10, -4 + 3 * random.nextDouble()),
                        Math.pow(10, -10 + 3 * random.nextDouble())));
            }
            Bank bank = bank(new SeriesPath(1e-4 + 1e-2 * random.nextDouble(), 1e-8 * random.nextDouble()), CHIP, Node.LOAD, sides.get(0), sides.get(1));
            for (double hz = 100; hz < 1e9; hz *= 1.3) {
                double lost = bank.at(hz).resistanceOhm();
                assertThat(lost).isPositive();
                assertThat(bank.nodesAt(hz).atConverter().re()).isPositive();
            }
        }
    }

    /** Unknowns: both voltages and the inductor's current, one ampere drawn at the load, with the sense point at either node. */
    @ParameterizedTest
    @ValueSource(doubles = {1e3, 2e4, 6e4, 3e5, 4e6})
    void closedLoopIsThatOfTheNodalEquations(double hz) {
        double omega = 2 * Math.PI * hz;
        Complex gain = new Complex(3, -40e3 / hz);
        Complex path = new Complex(0.002, omega * 1.5e-9);
        Complex near = z(BULK, hz).reciprocal().plus(z(CERAMIC, hz).reciprocal());
        Complex far = z(SMALL, hz).reciprocal().plus(new Complex(0, omega * 2e-8));
        Complex link = path.reciprocal();
        TwoNodePoint nodes = BOTH.nodesAt(hz);
        Complex inductor = new Complex(0.004, omega * 1e-6);
        for (Node sense : Node.values()) {
            int seen = 0;
            // Voltage mode: Vc = -G (Vs + R IL) - Zout IL. Current mode: IL = -G (Vs + R IL).
            for (Complex source : new Complex[] {inductor, null, inductor, null}) {
                double loadLineOhm = seen++ < 2 ? 0 : 3e-3;
                Complex drooping = gain.times(loadLineOhm);
                Complex none = Complex.ZERO;
                Complex atConverter = sense == Node.CONVERTER ? gain : none;
                Complex atLoad = sense == Node.LOAD ? gain : none;
                Complex[][] rows = {
                    {near.plus(link), link.times(-1), new Complex(-1, 0)},
                    {link.times(-1), far.plus(link), none},
                    source == null ? new Complex[] {atConverter, atLoad, Complex.ONE.plus(drooping)}
                            : new Complex[] {Complex.ONE.plus(atConverter), atLoad, source.plus(drooping)}};
                Complex loadV = solve(rows, new Complex[] {none, new Complex(-1, 0), none})[1];
                Complex sensed = sense == Node.LOAD ? nodes.transfer() : nodes.atConverter();
                Complex fedBack = gain.times(sensed.plus(new Complex(loadLineOhm, 0)));
                Complex loopGain = source == null ? fedBack : fedBack.over(source.plus(nodes.atConverter()));
                check("Closed-loop impedance at the load, " + (source == null ? "current mode" : "voltage mode") + ", sensed at the "
                        + sense.name().toLowerCase(Locale.ROOT) + (loadLineOhm > 0 ? ", with a load line" : ""), NODAL,
                        nodes.closedAtLoad(sense, loopGain, source, loadLineOhm), loadV.times(-1), 1e-9);
                same(nodes.closedAtLoad(sense, none, source, loadLineOhm), nodes.openAtLoad(source), 1e-12);
            }
        }
    }

    /** 1 F, 2 H and 1 F in a ring: resonance at 1 rad/s, without loss. */
    @Test
    void losslessResonanceIsRefusedAndNamed() {
        Bank ring = bank(new SeriesPath(0, 2), new SeriesRlc(1, 0, 0), Node.LOAD, List.of(Banks.branch(1, 0, 0)), List.of());
        double hz = 1 / (2 * Math.PI);
        assertThatThrownBy(() -> ring.nodesAt(hz)).hasMessageContaining("without loss").hasMessageContaining(String.valueOf(hz));
        assertThat(ring.nodesAt(hz * 1.001).atLoad().magnitude()).isGreaterThan(100);
    }

    /** 3 nH of the bulk and 20 nH of the path against 4 uF: the bulk rings through the path. */
    @Test
    void ringingThroughThePathIsFoundAndNamed() {
        Bank ringing = bank(new SeriesPath(1e-4, 20e-9), null, Node.LOAD, List.of(BULK), List.of(Banks.branch(4e-6, 1e-3, 0)));
        Extremum peak = ringing.extrema(1e4, 1e7).stream().filter(each -> each.kind() == Extremum.Kind.MAXIMUM).findFirst().orElseThrow();
        Check.that(Topic.MOUNTING, "3 nH of bulk and 20 nH of path ring with 4 uF at the load: 1 / (2 pi sqrt(L C)), the bulk's capacitance left out")
                .source(Source.fromMemory("circuit theory")).expected("Hz", 1 / (2 * Math.PI * Math.sqrt(23e-9 * 4e-6))).relative(0.02)
                .got(peak.frequencyHz());
        assertThat(CarrierRibbon.ringing(ringing, peak.frequencyHz(), true)).isEqualTo(new RingSide(0));
        assertThat(CarrierRibbon.ringing(ringing, peak.frequencyHz(), false)).isEqualTo(new RingSide(1));
    }

    /** The ceramic's 0.7 nH and 1.5 nH of the path against 20 nF of the load itself, with nothing else at the load. */
    @Test
    void ringingAgainstTheLoadsOwnCapacitanceNamesIt() {
        Bank ringing = bank(PLANE, CHIP, Node.LOAD, List.of(CERAMIC), List.of());
        FrequencyGrid grid = FrequencyGrid.logSpaced(1e5, 1e9, 401);
        CarrierRibbon ribbon = CarrierRibbon.of(ringing, ringing.on(grid), ringing.extrema(1e5, 1e9));
        assertThat(ribbon.rings()).singleElement().satisfies(ring -> {
            Check.that(Topic.MOUNTING, "2.2 nH of ceramic and path ring with 20 nF of the load: 1 / (2 pi sqrt(L C)), the ceramic's capacitance left out")
                    .source(Source.fromMemory("circuit theory")).expected("Hz", 1 / (2 * Math.PI * Math.sqrt(2.2e-9 * 2e-8))).relative(0.01)
                    .got(ring.frequencyHz());
            assertThat(ring.inductive()).isEqualTo(new RingSide(0));
            assertThat(ring.capacitive()).isEqualTo(RingSide.LOAD);
            assertThat(ring.capacitive().name(ringing)).isEqualTo("the load's capacitance");
        });
    }

    /** With the load's capacitance too small to matter beside the ceramic of that node, the ceramic stays the partner. */
    @Test
    void loadsOwnCapacitanceBesideALargerOneIsNotThePartner() {
        Bank ringing = bank(new SeriesPath(1e-4, 20e-9), CHIP, Node.LOAD, List.of(BULK), List.of(Banks.branch(4e-6, 1e-3, 0)));
        FrequencyGrid grid = FrequencyGrid.logSpaced(1e4, 1e7, 401);
        assertThat(CarrierRibbon.of(ringing, ringing.on(grid), ringing.extrema(1e4, 1e7)).rings()).singleElement()
                .satisfies(ring -> assertThat(ring.capacitive()).isEqualTo(new RingSide(1)));
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
