package org.stillrail.electrical.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.bank.SeriesPath;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.capacitor.TableModel;
import org.stillrail.electrical.curve.Complex;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

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

    /** The API's datasheet model at a wet electrolytic's figures, over six decades. */
    @Test
    void aDatasheetModelIsFittedWithinOnePerCent() {
        DatasheetModel model = new DatasheetModel(0.03, 12e-9, 300e-6, 0.94, List.of());
        RationalFit fit = ModelFit.of(model, 100, 1e8);
        assertThat(fit.passive()).isTrue();
        for (double hz = 100; hz < 1e8; hz *= 1.17) {
            ImpedancePoint exact = model.at(hz);
            ImpedancePoint fitted = fit.model().at(hz);
            double error = Math.hypot(exact.resistanceOhm() - fitted.resistanceOhm(), exact.reactanceOhm() - fitted.reactanceOhm());
            Check.that(Topic.FIT, "Datasheet model of a wet electrolytic, 100 Hz to 100 MHz, fitted: error of Z over |Z|")
                    .source(Source.independent("closed form of the constant-phase element between the points fitted")).expected("the model itself").absolute(0.01)
                    .compare("", 0, error / Math.hypot(exact.resistanceOhm(), exact.reactanceOhm()));
            assertThat(fitted.resistanceOhm()).isCloseTo(exact.resistanceOhm(), within(0.06 * exact.resistanceOhm()));
        }
    }

    @Test
    void aTableIsFittedAtItsOwnPointsAndGoesOnBelowThem() {
        Curve curve = Synthetic.sampled(Synthetic.wetAluminium(), FrequencyGrid.logSpaced(1e3, 1e7, 200));
        TableModel table = TableModel.of(curve.grid().toArray(), curve.reals(), curve.imaginaries());
        RationalFit fit = ModelFit.of(table, 1, 1e9);
        assertThat(fit.range().fromHz()).isEqualTo(1e3);
        assertThat(fit.range().toHz()).isEqualTo(1e7);
        Complex below = Synthetic.wetAluminium().apply(2 * Math.PI * 400);
        assertThat(fit.model().at(400).resistanceOhm()).isCloseTo(below.re(), within(0.15 * below.re()));
        assertThat(fit.model().at(400).reactanceOhm()).isCloseTo(below.im(), within(-0.05 * below.im()));
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
