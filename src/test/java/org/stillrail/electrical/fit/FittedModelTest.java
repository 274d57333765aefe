package org.stillrail.electrical.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.ImpedancePoint;
import org.stillrail.electrical.capacitor.ValidRange;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class FittedModelTest {

    private static final FrequencyGrid GRID = FrequencyGrid.logSpaced(1e3, 1e7, 200);

    @Test
    void theModelIsTheFitOnAGridAndAtAPoint() {
        RationalFit fit = VectorFitting.fit(Synthetic.sampled(Synthetic.polymer(), GRID));
        FittedModel model = fit.model();
        FrequencyGrid three = FrequencyGrid.of(2e3, 3e5, 4e6);
        double[] r = {1, 1, 1};
        double[] x = {2, 2, 2};
        model.addImpedanceTo(three, r, x);
        for (int i = 0; i < 3; i++) {
            ImpedancePoint point = model.at(three.hz(i));
            assertThat(r[i]).isCloseTo(1 + point.resistanceOhm(), within(1e-15));
            assertThat(x[i]).isCloseTo(2 + point.reactanceOhm(), within(1e-15));
            double step = 1e-6 * three.hz(i);
            double slope = (model.at(three.hz(i) + step).reactanceOhm() - model.at(three.hz(i) - step).reactanceOhm()) / (2 * step);
            assertThat(point.reactanceOhmPerHz()).isCloseTo(slope, within(1e-6 * Math.abs(slope)));
        }
        assertThat(model.validRange()).isEqualTo(new ValidRange(1e3, 1e7));
        assertThat(model.inductanceAtInfinityH()).isCloseTo(2e-9, within(0.05e-9));
    }

    /** Two decades above the data and half a decade below, for this part. */
    @Test
    void theFitContinuesAPartBeyondItsData() {
        RationalFit fit = VectorFitting.fit(Synthetic.sampled(Synthetic.wetAluminium(), FrequencyGrid.logSpaced(1e3, 1e8, 300)));
        Source closedForm = Source.independent("impedance in closed form");
        Check.that(Topic.FIT, "Fit of a wet electrolytic two decades above its data: largest error of Z over |Z|").source(closedForm)
                .expected("", 0).absolute(0.01).got(Synthetic.worstError(fit.function(), Synthetic.wetAluminium(), 1e8, 1e10));
        Check.that(Topic.FIT, "Fit of a wet electrolytic half a decade below its data: largest error of Z over |Z|").source(closedForm)
                .expected("", 0).absolute(0.1).got(Synthetic.worstError(fit.function(), Synthetic.wetAluminium(), 300, 1e3));
    }
}
