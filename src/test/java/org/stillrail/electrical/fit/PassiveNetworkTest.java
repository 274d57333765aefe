package org.stillrail.electrical.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.DoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** Any network of a few parts with losses comes back passive, stable and within the tolerance. */
class PassiveNetworkTest {

    /** A capacitor with ESR, ESL and one relaxation. */
    record Part(double farad, double ohm, double henry, double lossOhm, double lossFarad) {

        Complex at(double omega) {
            return Synthetic.resistor(ohm).plus(Synthetic.inductor(henry, omega)).plus(Synthetic.capacitor(farad, omega))
                    .plus(Synthetic.parallel(Synthetic.resistor(lossOhm), Synthetic.capacitor(lossFarad, omega)));
        }
    }

    @Provide
    Arbitrary<List<Part>> networks() {
        Arbitrary<Double> farad = logarithmic(1e-8, 1e-3);
        Arbitrary<Double> ohm = logarithmic(2e-3, 1);
        Arbitrary<Double> henry = logarithmic(1e-10, 1e-8);
        Arbitrary<Double> lossOhm = logarithmic(1e-3, 1);
        Arbitrary<Double> lossFarad = logarithmic(1e-7, 1e-3);
        return Combinators.combine(farad, ohm, henry, lossOhm, lossFarad).as(Part::new).list().ofMinSize(1).ofMaxSize(3);
    }

    private static Arbitrary<Double> logarithmic(double from, double to) {
        return Arbitraries.doubles().between(0, 1).ofScale(6).map(share -> from * Math.pow(to / from, share));
    }

    @Property(tries = 200)
    void partsInParallelComeBackPassive(@ForAll("networks") List<Part> parts) {
        DoubleFunction<Complex> z = omega -> {
            Complex admittance = Complex.ZERO;
            for (Part part : parts) {
                admittance = admittance.plus(part.at(omega).reciprocal());
            }
            return admittance.reciprocal();
        };
        RationalFit fit = VectorFitting.fit(Synthetic.sampled(z, FrequencyGrid.logSpaced(1e2, 1e9, 350)));
        Check.that(Topic.FIT, "200 random networks of up to three parts in parallel: largest error of Z over |Z|")
                .source(Source.independent("impedance in closed form at the points")).expected("the network").absolute(0.01)
                .compare("", 0, fit.worstRelativeErrorPercent() / 100);
        assertThat(fit.stable()).isTrue();
        assertThat(fit.passive()).isTrue();
        assertThat(Synthetic.lowestRelativeRe(fit.function())).isGreaterThanOrEqualTo(-1e-12);
    }

    @Property(tries = 100)
    void partsInSeriesComeBackPassive(@ForAll("networks") List<Part> parts) {
        DoubleFunction<Complex> z = omega -> {
            Complex sum = Complex.ZERO;
            for (Part part : parts) {
                sum = sum.plus(part.at(omega));
            }
            return sum;
        };
        RationalFit fit = VectorFitting.fit(Synthetic.noisy(z, FrequencyGrid.logSpaced(1e2, 1e9, 350), 0.001, parts.hashCode()));
        assertThat(fit.worstRelativeErrorPercent()).isLessThanOrEqualTo(1);
        assertThat(fit.passive()).isTrue();
        assertThat(Synthetic.lowestRelativeRe(fit.function())).isGreaterThanOrEqualTo(-1e-12);
    }
}
