package org.stillrail.electrical.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class NonNegativeLeastSquaresTest {

    /** The point of the half-plane x + 2y >= 5 nearest to the origin is (1, 2), by hand. */
    @Test
    void theNearestPointOfAHalfPlane() {
        double[] u = NonNegativeLeastSquares.leastDistance(new double[][] {{1, 2}}, new double[] {5});
        Check.that(Topic.FIT, "Point of x + 2 y >= 5 nearest to the origin").source(Source.independent("by hand")).expected("", 1, 2).absolute(1e-12)
                .got(u);
    }

    @Test
    void aConstraintThatHoldsAnywayChangesNothing() {
        double[] u = NonNegativeLeastSquares.leastDistance(new double[][] {{1, 2}, {1, 0}}, new double[] {5, -3});
        assertThat(u[0]).isCloseTo(1, within(1e-12));
        assertThat(u[1]).isCloseTo(2, within(1e-12));
    }

    @Test
    void contradictingConstraintsHaveNoAnswer() {
        assertThat(NonNegativeLeastSquares.leastDistance(new double[][] {{1, 0}, {-1, 0}}, new double[] {1, 1})).isNull();
    }

    /** Conditions of Karush, Kuhn and Tucker: no negative unknown, no descent left, gradient 0 where the unknown is free. */
    @Test
    void theSolutionIsOptimal() {
        Random random = new Random(17);
        for (int run = 0; run < 200; run++) {
            double[][] e = new double[6][9];
            double[] f = random.doubles(9, -1, 1).toArray();
            for (double[] column : e) {
                for (int i = 0; i < column.length; i++) {
                    column[i] = random.nextDouble() * 2 - 1;
                }
            }
            double[] y = NonNegativeLeastSquares.solve(e, f);
            for (int k = 0; k < y.length; k++) {
                double descent = 0;
                for (int i = 0; i < f.length; i++) {
                    double miss = f[i];
                    for (int m = 0; m < y.length; m++) {
                        miss -= e[m][i] * y[m];
                    }
                    descent += e[k][i] * miss;
                }
                assertThat(y[k]).isGreaterThanOrEqualTo(0);
                assertThat(descent).isLessThan(1e-9);
                assertThat(y[k] * descent).isCloseTo(0, within(1e-9));
            }
        }
    }
}
