package org.stillrail.electrical.ripple;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillrail.electrical.bank.Bank;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/**
 * Ripple against an integration in time of two R-L-C branches, which shares nothing with the sum over harmonics: the node
 * equations are integrated until the start has died out, and the highest and lowest voltage of the last period are taken.
 */
class RippleIntegrationTest {

    private static final Source INTEGRATION = Source.independent("node equations integrated by a Runge-Kutta of order 8 (Hipparchus, Dormand-Prince), last of 120 periods");
    private static final double C1 = 1e-4;
    private static final double R1 = 0.03;
    private static final double L1 = 3e-9;
    private static final double C2 = 4.4e-5;
    private static final double R2 = 0.004;

    @ParameterizedTest
    @CsvSource({
        "1, 3.3, 0.8e-9",
        "2, 3.3, 0.8e-9",
        "3, 1.2, 0.8e-9",
        "1, 1.0, 0.2e-9",
        "2, 5.0, 2e-9"})
    void buckIntoTwoBranches(int phases, double outputV, double l2) {
        Bank bank = Banks.of(Banks.branch(C1, R1, L1), Banks.branch(C2, R2, l2));
        BuckCurrent buck = new BuckCurrent(12, outputV, 1.5e-6, 400e3, phases);
        Ripple ripple = Ripple.of(bank, buck, 2000);
        double[] expected = integrate(buck.waveform(), l2);
        String name = "Buck of %d phases, 12 V to %s V, into two R-L-C branches (second %s nH)".formatted(phases, outputV, (float) (1e9 * l2));
        Check.that(Topic.RIPPLE, name + ": ripple, peak to peak").source(INTEGRATION).expected("V", expected[0]).relative(2e-4)
                .got(ripple.peakToPeakV());
        Check.that(Topic.RIPPLE, name + ": ripple, rms").source(INTEGRATION).expected("V", expected[1]).relative(5e-4).got(ripple.rmsV());
        Check.that(Topic.RIPPLE, name + ": current of each branch, rms").source(INTEGRATION).expected("A", expected[2], expected[3]).relative(5e-4)
                .got(ripple.branches().get(0).rmsA(), ripple.branches().get(1).rmsA());
    }

    @ParameterizedTest
    @CsvSource({"0.8e-9", "0.2e-9"})
    void currentWithShortEdges(double l2) {
        PiecewiseLinearCurrent current = PiecewiseLinearCurrent.of(
                2.5e-6, new double[] {0, 20e-9, 1e-6, 1.03e-6}, new double[] {0, 4, 3, 0});
        Bank bank = Banks.of(Banks.branch(C1, R1, L1), Banks.branch(C2, R2, l2));
        Ripple ripple = Ripple.of(bank, current, 2000);
        double[] expected = integrate(current.waveform(), l2);
        String name = "Current with edges of 20 ns and 30 ns into two R-L-C branches (second %s nH)".formatted((float) (1e9 * l2));
        Check.that(Topic.RIPPLE, name + ": ripple, peak to peak").source(INTEGRATION).expected("V", expected[0]).relative(2e-4)
                .got(ripple.peakToPeakV());
        Check.that(Topic.RIPPLE, name + ": ripple, rms").source(INTEGRATION).expected("V", expected[1]).relative(5e-4).got(ripple.rmsV());
    }

    /** Peak-to-peak V, rms V, rms A of both branches, over the last period. States: i1, v1, v2 (i2 = i - i1). */
    private static double[] integrate(PiecewiseLinear current, double l2) {
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-15, 1e-8, 1e-12, 1e-11);
        double period = current.periodS();
        int periods = 120;
        int points = 4000;
        double[] state = {0, 0, 0};
        double high = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double mean = 0;
        double square = 0;
        double square1 = 0;
        double square2 = 0;
        for (int n = 0; n < periods; n++) {
            boolean last = n == periods - 1;
            for (int piece = 0; piece < current.pieces(); piece++) {
                double slope = current.slope(piece);
                double start = current.startS(piece);
                double length = current.endS(piece) - start;
                double from = current.current(piece, start);
                Network network = new Network(t -> from + slope * t, slope, l2);
                int steps = last ? Math.max(50, (int) (points * length / period)) : 1;
                for (int i = 0; i < steps; i++) {
                    double a = length * i / steps;
                    double b = length * (i + 1) / steps;
                    double vBefore = network.voltage(a, state);
                    double i1Before = state[0];
                    double i2Before = network.current(a) - state[0];
                    state = integrator.integrate(network, new ODEState(a, state), b).getPrimaryState();
                    if (last) {
                        double v = network.voltage(b, state);
                        double i2 = network.current(b) - state[0];
                        high = Math.max(high, Math.max(v, vBefore));
                        low = Math.min(low, Math.min(v, vBefore));
                        double share = (b - a) / period;
                        mean += share * (v + vBefore) / 2;
                        square += share * (v * v + v * vBefore + vBefore * vBefore) / 3;
                        square1 += share * (state[0] * state[0] + state[0] * i1Before + i1Before * i1Before) / 3;
                        square2 += share * (i2 * i2 + i2 * i2Before + i2Before * i2Before) / 3;
                    }
                }
            }
        }
        return new double[] {high - low, Math.sqrt(square - mean * mean), Math.sqrt(square1), Math.sqrt(square2)};
    }

    private record Network(DoubleUnaryOperator source, double slope, double l2) implements OrdinaryDifferentialEquation {

        double current(double t) {
            return source.applyAsDouble(t);
        }

        /** Both branches have the node's voltage and their slopes add to the source's. */
        private double firstSlope(double t, double[] y) {
            double i2 = current(t) - y[0];
            return (R2 * i2 + y[2] + l2 * slope - R1 * y[0] - y[1]) / (L1 + l2);
        }

        double voltage(double t, double[] y) {
            return R1 * y[0] + y[1] + L1 * firstSlope(t, y);
        }

        @Override
        public int getDimension() {
            return 3;
        }

        @Override
        public double[] computeDerivatives(double t, double[] y) {
            return new double[] {firstSlope(t, y), y[0] / C1, (current(t) - y[0]) / C2};
        }
    }
}
