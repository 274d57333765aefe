package org.stillrail.electrical.capacitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class BentModelTest {

    /** For a series R-L-C the bent model is the same circuit with k C. */
    @Test
    void bendsOnlyTheCapacitance() {
        BentModel bent = new BentModel(new SeriesRlc(1e-5, 0.01, 1e-9), 1e-5, 0.4);
        SeriesRlc expected = new SeriesRlc(4e-6, 0.01, 1e-9);
        FrequencyGrid grid = FrequencyGrid.logSpaced(1e2, 1e8, 30);
        double[] r = new double[30];
        double[] x = new double[30];
        bent.addImpedanceTo(grid, r, x);
        for (int i = 0; i < 30; i++) {
            ImpedancePoint z = expected.at(grid.hz(i));
            assertThat(r[i]).isEqualTo(0.01);
            Check.that(Topic.CHARACTERISTICS, "Series R-L-C bent to 40 % of its capacitance: reactance")
                    .source(Source.fromMemory("circuit theory: the same circuit with k C")).expected("that of the circuit at 30 frequencies").relative(1e-10)
                    .compare("ohm", z.reactanceOhm(), x[i]);
            assertThat(bent.at(grid.hz(i)).reactanceOhm()).isCloseTo(z.reactanceOhm(), withPercentage(1e-8));
            Slopes.check(bent, grid.hz(i));
        }
        assertThat(bent.inductanceAtInfinityH()).isEqualTo(1e-9);
    }
}
