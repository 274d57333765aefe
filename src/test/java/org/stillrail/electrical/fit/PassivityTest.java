package org.stillrail.electrical.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.electrical.fit.PartialFractions.Terms;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class PassivityTest {

    private static RationalFunction real(double pole, double residue, double constant) {
        return new RationalFunction(new double[] {pole}, new double[] {0}, new double[] {residue}, new double[] {0}, 0, constant, 0);
    }

    private static RationalFunction pair(double a, double b, double c, double d, double constant) {
        return new RationalFunction(new double[] {a}, new double[] {b}, new double[] {c}, new double[] {d}, 0, constant, 0);
    }

    @Test
    void resistorParallelCapacitorIsPassive() {
        assertThat(Passivity.of(real(-5e5, 1e4, 0)).passive()).isTrue();
        assertThat(Passivity.of(real(-5e5, 1e4, 0.01)).passive()).isTrue();
    }

    /** Re = d + r wp / (w^2 + wp^2) with r = -3, wp = 2, d = 1 crosses 0 at w^2 = 6 - 4, by hand. */
    @Test
    void theCrossingIsWhereItIsByHand() {
        Passivity.Report report = Passivity.of(real(-2, -3, 1));
        assertThat(report.passive()).isFalse();
        assertThat(report.violations()).hasSize(1);
        assertThat(report.violations().get(0).fromOmega()).isZero();
        Check.that(Topic.FIT, "Where Re of 1 - 3 / (s + 2) crosses zero: w^2 = 6 - 4").source(Source.independent("by hand"))
                .expected("rad/s", Math.sqrt(2)).absolute(1e-12).got(report.violations().get(0).toOmega());
        assertThat(report.violations().get(0).worstRe()).isCloseTo(-0.5, within(1e-6));
    }

    @Test
    void aNegativeConstantIsNegativeAtInfinity() {
        Passivity.Report report = Passivity.of(real(-2, 3, -1e-3));
        assertThat(report.passive()).isFalse();
        assertThat(report.violations().get(0).toOmega()).isInfinite();
        assertThat(report.violations().get(0).fromOmega()).isCloseTo(Math.sqrt(6 / 1e-3 - 4), within(1e-6));
    }

    /** A sharp dip far from every sample: half-width 1e-6 of its frequency. */
    @Test
    void aNeedleBetweenAllSamplesIsFound() {
        double beta = 1.23456e7;
        double alpha = 1e-6 * beta;
        RationalFunction needle = pair(-alpha, beta, -1.01 * alpha, 0, 1);
        Passivity.Report report = Passivity.of(needle);
        assertThat(report.passive()).isFalse();
        assertThat(report.violations().get(0).worstOmega()).isCloseTo(beta, within(1e-4 * beta));
        assertThat(report.violations().get(0).worstRe()).isCloseTo(-0.01, within(1e-6));
        assertThat(Passivity.of(pair(-alpha, beta, -0.99 * alpha, 0, 1)).passive()).isTrue();
    }

    /** Poles over nine decades with one shallow dip at the low end. */
    @Test
    void aDipBelowPolesOverManyDecadesIsFound() {
        RationalFunction z = new RationalFunction(new double[] {-1e11, -1e8, -1e5, -1e2}, new double[4],
                new double[] {1e9, 1e6, 1e3, -1.5}, new double[4], 0, 0, 0);
        Passivity.Report report = Passivity.of(z);
        assertThat(z.at(1).re()).isPositive();
        assertThat(report.passive()).isTrue();
        RationalFunction deeper = new RationalFunction(new double[] {-1e11, -1e8, -1e5, -1e2}, new double[4],
                new double[] {1e9, 1e6, 1e3, -3.2}, new double[4], 0, 0, 0);
        assertThat(deeper.at(1).re()).isNegative();
        assertThat(Passivity.of(deeper).violations()).hasSize(1);
    }

    @Test
    void aNegativeInductanceOrCapacitanceOrAnUnstablePoleIsNotPassive() {
        RationalFunction inductance = new RationalFunction(new double[0], new double[0], new double[0], new double[0], 1, 1, -1e-9);
        RationalFunction capacitance = new RationalFunction(new double[0], new double[0], new double[0], new double[0], -1, 1, 1e-9);
        assertThat(Passivity.of(inductance).passive()).isFalse();
        assertThat(Passivity.of(capacitance).passive()).isFalse();
        assertThat(Passivity.of(real(2, 3, 1)).passive()).isFalse();
    }

    /** CP-02: the integral of Re Z over omega is pi / (2C) when Z tends to 1/(j w C). */
    @Test
    void theResistanceIntegralOfAFitIsThatOfItsCapacitance() {
        double c = 1e-4;
        Curve curve = Synthetic.sampled(w -> Synthetic.parallel(Synthetic.resistor(0.02), Synthetic.capacitor(c, w)),
                FrequencyGrid.logSpaced(100, 1e8, 200));
        RationalFit fit = VectorFitting.fit(curve);
        assertThat(fit.passive()).isTrue();
        assertThat(fit.order()).isEqualTo(1);
        double integral = 0;
        int steps = 400_000;
        double low = Math.log(1e-4);
        double width = (Math.log(1e14) - low) / steps;
        for (int i = 0; i < steps; i++) {
            double omega = Math.exp(low + (i + 0.5) * width);
            integral += (fit.function().at(omega).re() - fit.constant()) * omega * width;
        }
        Check.that(Topic.FIT, "Resistance integral of a fitted 20 mohm beside 100 uF: pi / (2 C)")
                .source(Source.fromMemory("H. W. Bode, Network Analysis and Feedback Amplifier Design, 1945; quadrature of the fit"))
                .expected("ohm rad/s", 15707.963267948964).relative(1e-6).got(integral);
        assertThat(Math.abs(fit.constant())).isLessThan(1e-12);
    }

    /** CP-03: 1 ohm parallel 1 F, X found from R alone by quadrature of the fit. */
    @Test
    void theReactanceOfAFitFollowsFromItsResistance() {
        Curve curve = Synthetic.sampled(w -> Synthetic.parallel(Synthetic.resistor(1), Synthetic.capacitor(1, w)),
                FrequencyGrid.logSpaced(0.001, 100, 100));
        RationalFunction z = VectorFitting.fit(curve).function();
        double[] omegas = {0.3, 1, 3};
        double[] expected = {-0.2752293577981651, -0.5, -0.3};
        for (int k = 0; k < omegas.length; k++) {
            double w = omegas[k];
            double sum = 0;
            int steps = 200_000;
            double width = 40.0 / steps;
            for (int i = 0; i < steps; i++) {
                double u = (i + 0.5) * width;
                double above = z.at(w * Math.exp(u)).re();
                double below = z.at(w * Math.exp(-u)).re();
                sum += (above - below) / Math.sinh(u) * width;
            }
            Check.that(Topic.FIT, "Reactance of a fitted 1 ohm beside 1 F from its resistance alone, at " + w + " rad/s")
                    .source(Source.fromMemory("H. A. Kramers 1927, R. de L. Kronig 1926; H. W. Bode 1945; quadrature of the fit"))
                    .expected("ohm", expected[k]).absolute(1e-5).got(sum / Math.PI);
            assertThat(z.at(w).im()).isCloseTo(expected[k], within(1e-9));
        }
    }

    /** 60 uohm are taken from a part of 50 uohm: the resistance is negative everywhere until it is mended. */
    @Test
    void aPlantedViolationIsRepaired() {
        Curve curve = Synthetic.sampled(w -> Synthetic.resistor(50e-6).plus(Synthetic.inductor(0.4e-9, w))
                .plus(Synthetic.capacitor(10e-6, w)), FrequencyGrid.logSpaced(1e3, 1e8, 300));
        Samples samples = Samples.of(curve, 0.005);
        ResidueFit good = ResidueFit.of(samples, PoleSet.reals(3, samples.omega[0], samples.omega[299]), new Terms(true, true));
        double[] planted = good.coefficients.clone();
        planted[good.poles.order()] -= 60e-6;
        ResidueFit bad = good.with(samples, planted);
        assertThat(Passivity.of(bad.function()).passive()).isFalse();
        ResidueFit repaired = PassivityEnforcement.of(samples, bad);
        assertThat(repaired).isNotNull();
        assertThat(Passivity.of(repaired.function()).passive()).isTrue();
        assertThat(Synthetic.lowestRelativeRe(repaired.function())).isGreaterThanOrEqualTo(0);
        for (int i = 0; i < samples.size(); i += 50) {
            Complex change = repaired.function().at(samples.omega[i]).minus(bad.function().at(samples.omega[i]));
            assertThat(change.magnitude()).isLessThan(0.01 * samples.magnitude[i]);
        }
    }

    /** Too much to mend: minus one ohm in series with everything. */
    @Test
    void aGrossViolationIsRefused() {
        Curve curve = Synthetic.sampled(Synthetic.polymer(), FrequencyGrid.logSpaced(1e3, 1e8, 300));
        double[] re = curve.reals();
        for (int i = 0; i < re.length; i++) {
            re[i] -= 1;
        }
        RationalFit fit = VectorFitting.fit(new Curve(curve.grid(), re, curve.imaginaries()));
        assertThat(fit.passive()).isFalse();
        assertThat(fit.worstRelativeErrorPercent()).isLessThan(1);
        assertThat(fit.remarks()).anySatisfy(remark -> assertThat(remark).contains("not passive"));
    }
}
