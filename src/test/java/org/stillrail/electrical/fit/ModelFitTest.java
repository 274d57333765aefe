package org.stillrail.electrical.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.FrequencyGrid;

class ModelFitTest {

    @Test
    void aClosedFormIsSampledAndFitted() {
        RationalFit fit = ModelFit.of(new SeriesRlc(47e-6, 0.01, 3e-9), 100, 1e8);
        assertThat(fit.order()).isEqualTo(1);
        assertThat(fit.range().fromHz()).isEqualTo(100);
        assertThat(fit.range().toHz()).isEqualTo(1e8);
    }

    @Test
    void aFittedModelIsItsOwnFit() {
        RationalFit fit = ModelFit.of(new SeriesRlc(47e-6, 0.01, 3e-9), 100, 1e8);
        assertThat(ModelFit.of(fit.model(), 1, 10)).isSameAs(fit);
    }

    /** The realised branch has the branch's own impedance: count, mounting and shared path included. */
    @Test
    void aBranchIsRealisedFromItsPart() {
        SeriesPath mounting = new SeriesPath(0.3e-3, 0.5e-9);
        SeriesPath shared = new SeriesPath(0.2e-3, 0.1e-9);
        RationalFit fit = VectorFitting.fit(Synthetic.sampled(Synthetic.polymer(),
                FrequencyGrid.logSpaced(1e3, 1e8, 200)));
        Branch branch = new Branch("bulk", 3, fit.model(), mounting, shared);
        StateSpace space = fit.stateSpace().inBranch(3, 0.1e-3 + 0.2e-3, branch.inductanceAtInfinityH() - fit.proportional() / 3);
        for (double hz : new double[] {1e3, 7e4, 2e7}) {
            ImpedancePoint z = branch.at(hz);
            Complex realised = space.at(2 * Math.PI * hz);
            assertThat(realised.re()).isCloseTo(z.resistanceOhm(), within(1e-12));
            assertThat(realised.im()).isCloseTo(z.reactanceOhm(), within(1e-12));
        }
    }
}
