package org.stillrail.electrical.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.verification.Check;
import org.stillrail.verification.Topic;

class RationalFunctionTest {

    private static final double[] X = {1, 1000, 5000, 10000, 35000, 72000, 100000};

    /** VF-01, sum of r/(s - p) alone at s = jx in the poles' own unit. */
    @Test
    void theSumOfThePublishedFunctionIsMet() {
        double[][] expected = {
            {-19.07733759806121, 0.0002666791002331817}, {-19.176264581567438, 0.26161832310201416},
            {-17.04213408238756, 70.81164963731592}, {-17.062471071721042, 1.3059182951841979},
            {-14.104688915525783, 17.274711259574346}, {17.429631907447707, 9.640941317134887},
            {12.81759473887224, 1.0047994756481486}};
        RationalFunction sum = PublishedFunction.terms(0, 10, 1, 0, 0);
        for (int i = 0; i < X.length; i++) {
            assertNear("Published function of 18 poles, sum of its terms: error over its size", sum.at(X[i]), expected[i]);
        }
    }

    /** VF-02: poles 1 to 10 with h and d + 2d, poles 9 to 18 with 3h, times 2 pi. */
    @Test
    void bothElementsOfThePublishedPairAreMet() {
        double[][] first = {
            {-12.479952077826301, 0.00037011228302551375}, {-12.57771743519313, 0.36504612034142214},
            {-10.41554231946423, 71.32813783099425}, {-10.34612680780158, 2.33471104255329860},
            {-5.369099848835829, 20.497291510634454}, {2.7361308881667177, 9.843743817687209},
            {1.409595678195608, 13.19786477442808}};
        double[][] second = {
            {-8.663991613283132, 0.00039978787377637924}, {-8.666470593189176, 0.39979379942381377},
            {-8.726526864344198, 1.9996858062973761}, {-8.921459494220061, 4.003999763907338},
            {-14.883104120830415, 14.491914043718458}, {17.00279385896926, 36.00210497775667},
            {12.68510443541449, 38.07481017567372}};
        RationalFunction one = PublishedFunction.terms(0, 6, 2 * Math.PI, 0.6, 2e-5);
        RationalFunction two = PublishedFunction.terms(5, 10, 2 * Math.PI, 0, 6e-5);
        for (int i = 0; i < X.length; i++) {
            assertNear("Published pair, first element: error over its size", one.at(2 * Math.PI * X[i]), first[i]);
            assertNear("Published pair, second element: error over its size", two.at(2 * Math.PI * X[i]), second[i]);
        }
    }

    /** Central difference of the function itself. */
    @Test
    void theSlopeIsTheDerivative() {
        RationalFunction z = PublishedFunction.whole();
        for (double hz : new double[] {10, 3000, 36000, 69000}) {
            double omega = 2 * Math.PI * hz;
            double step = 1e-6 * omega;
            Complex difference = z.at(omega + step).minus(z.at(omega - step)).times(1 / (2 * step));
            assertThat(z.slopeAt(omega).minus(difference).magnitude()).isLessThan(1e-6 * difference.magnitude());
        }
    }

    @Test
    void theStateSpaceHasTheSameResponse() {
        RationalFunction z = new RationalFunction(new double[] {-3e5, -2e4}, new double[] {0, 7e4}, new double[] {4e3, -20},
                new double[] {0, 150}, 1e5, 0.01, 2e-9);
        StateSpace space = z.stateSpace();
        assertThat(space.order()).isEqualTo(4);
        for (double omega : new double[] {1e2, 6.9e4, 3e6}) {
            Complex byBlocks = space.at(omega);
            assertThat(byBlocks.minus(z.at(omega)).magnitude()).isLessThan(1e-12 * z.at(omega).magnitude());
        }
    }

    @Test
    void polesAndResiduesSpellOutConjugatesAndTheCapacitance() {
        RationalFunction z = new RationalFunction(new double[] {-2}, new double[] {3}, new double[] {5}, new double[] {7}, 11, 0, 0);
        assertThat(z.poles()).containsExactly(Complex.ZERO, new Complex(-2, 3), new Complex(-2, -3));
        assertThat(z.residues()).containsExactly(new Complex(11, 0), new Complex(5, 7), new Complex(5, -7));
        assertThat(z.order()).isEqualTo(3);
        assertThat(z.stable()).isTrue();
    }

    @Test
    void aPoleOnTheAxisOrRightOfItIsNotStable() {
        assertThat(withPole(0, 3).stable()).isFalse();
        assertThat(withPole(2, 0).stable()).isFalse();
        assertThat(withPole(-2, 0).stable()).isTrue();
    }

    private static RationalFunction withPole(double re, double im) {
        return new RationalFunction(new double[] {re}, new double[] {im}, new double[] {1}, new double[] {0}, 0, 0, 0);
    }

    @Test
    void aRealPoleWithAComplexResidueIsRefused() {
        assertThatThrownBy(() -> new RationalFunction(new double[] {-2}, new double[] {0}, new double[] {5}, new double[] {7}, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("Entry 0");
    }

    private static void assertNear(String subject, Complex value, double[] expected) {
        Complex exact = new Complex(expected[0], expected[1]);
        Check.that(Topic.FIT, subject).source(PublishedFunction.SOURCE).expected("the complex sum computed in Python at 7 frequencies").absolute(1e-9)
                .compare("", 0, value.minus(exact).magnitude() / exact.magnitude());
    }
}
