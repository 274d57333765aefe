package org.stillrail.electrical.fit;

import java.util.Random;
import java.util.function.DoubleFunction;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;

/** Impedances in closed form over omega in rad/s, each typical of a technology; values invented, orders of magnitude common. */
final class Synthetic {

    private Synthetic() {
    }

    static Complex resistor(double ohm) {
        return new Complex(ohm, 0);
    }

    static Complex inductor(double henry, double omega) {
        return new Complex(0, omega * henry);
    }

    static Complex capacitor(double farad, double omega) {
        return new Complex(0, -1 / (omega * farad));
    }

    /** {@code 1 / (q (j omega)^a)}. */
    static Complex constantPhase(double q, double a, double omega) {
        return Complex.polar(1 / (q * Math.pow(omega, a)), -a * Math.PI / 2);
    }

    static Complex parallel(Complex a, Complex b) {
        return a.reciprocal().plus(b.reciprocal()).reciprocal();
    }

    /** Resistance and inductance of the skin effect, {@code k sqrt(j omega)}. */
    static Complex skin(double k, double omega) {
        return Complex.polar(k * Math.sqrt(omega), Math.PI / 4);
    }

    static DoubleFunction<Complex> ceramic() {
        return w -> resistor(0.002).plus(inductor(0.4e-9, w)).plus(skin(1.2e-7, w)).plus(constantPhase(10e-6, 0.992, w));
    }

    /** With a second resonance inside, as reverse-geometry and multi-terminal parts show it. */
    static DoubleFunction<Complex> ceramicWithInnerResonance() {
        return w -> ceramic().apply(w).plus(parallel(inductor(3e-11, w), resistor(0.02).plus(capacitor(2e-9, w))));
    }

    static DoubleFunction<Complex> polymer() {
        return w -> resistor(0.009).plus(inductor(2e-9, w)).plus(constantPhase(330e-6, 0.985, w))
                .plus(parallel(resistor(0.003), capacitor(100e-6, w)));
    }

    static DoubleFunction<Complex> wetAluminium() {
        return w -> resistor(0.08).plus(inductor(15e-9, w)).plus(constantPhase(350e-6, 0.93, w));
    }

    static DoubleFunction<Complex> wetAluminiumInTheCold() {
        return w -> resistor(0.02).plus(inductor(15e-9, w)).plus(constantPhase(220e-6, 0.95, w))
                .plus(parallel(resistor(0.3), capacitor(20e-6, w)));
    }

    /** Pores as an R-C line closed at the end, {@code sqrt(R / (s C)) coth(sqrt(s R C))}: C = 5 F, R = 0.03 ohm. */
    static DoubleFunction<Complex> doubleLayer() {
        return w -> {
            double turn = Math.sqrt(w * 0.03 * 5) * Math.sqrt(0.5);
            double bottom = Math.cosh(2 * turn) - Math.cos(2 * turn);
            Complex coth = turn > 20 ? Complex.ONE : new Complex(Math.sinh(2 * turn) / bottom, -Math.sin(2 * turn) / bottom);
            Complex root = Complex.polar(Math.sqrt(w * 0.03 * 5), Math.PI / 4);
            return resistor(0.01).plus(inductor(20e-9, w)).plus(coth.times(0.03).over(root));
        };
    }

    static Curve sampled(DoubleFunction<Complex> z, FrequencyGrid grid) {
        return noisy(z, grid, 0, 0);
    }

    /** With an error of each point anywhere inside a circle of {@code noise} times |Z|. */
    static Curve noisy(DoubleFunction<Complex> z, FrequencyGrid grid, double noise, long seed) {
        Random random = new Random(seed);
        double[] re = new double[grid.size()];
        double[] im = new double[grid.size()];
        for (int i = 0; i < re.length; i++) {
            Complex exact = z.apply(grid.omega(i));
            Complex error = Complex.polar(noise * exact.magnitude() * Math.sqrt(random.nextDouble()), 2 * Math.PI * random.nextDouble());
            re[i] = exact.re() + error.re();
            im[i] = exact.im() + error.im();
        }
        return new Curve(grid, re, im);
    }

    /** Largest complex error of a function against the closed form over |Z|, between two frequencies. */
    static double worstError(RationalFunction fit, DoubleFunction<Complex> z, double fromHz, double toHz) {
        FrequencyGrid grid = FrequencyGrid.logSpaced(fromHz, toHz, 1777);
        double worst = 0;
        for (int i = 0; i < grid.size(); i++) {
            Complex exact = z.apply(grid.omega(i));
            worst = Math.max(worst, fit.at(grid.omega(i)).minus(exact).magnitude() / exact.magnitude());
        }
        return worst;
    }

    /** Lowest Re over a wide, dense grid, over |Z| there; an independent look at passivity. */
    static double lowestRelativeRe(RationalFunction fit) {
        FrequencyGrid grid = FrequencyGrid.logSpaced(1e-4, 1e13, 20_001);
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < grid.size(); i++) {
            Complex z = fit.at(grid.omega(i));
            lowest = Math.min(lowest, z.re() / z.magnitude());
        }
        return lowest;
    }
}
