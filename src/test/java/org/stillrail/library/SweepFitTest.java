package org.stillrail.library;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.capacitor.SeriesRlc;
import org.stillrail.electrical.curve.Curve;
import org.stillrail.electrical.curve.FrequencyGrid;
import org.stillrail.web.Quantity;

class SweepFitTest {

    /** 10 uF, 3 mohm, 1 nH, its resistance rippled as no low order follows it. */
    private static SweepFit fit(double ripple) {
        FrequencyGrid grid = FrequencyGrid.logSpaced(1e3, 1e7, 201);
        double[] r = new double[grid.size()];
        double[] x = new double[grid.size()];
        new SeriesRlc(10e-6, 3e-3, 1e-9).addImpedanceTo(grid, r, x);
        for (int i = 0; i < r.length; i++) {
            r[i] *= 1 + ripple * Math.sin(i);
        }
        return SweepFit.of(new Curve(grid, r, x), 20);
    }

    @Test
    void theErrorOfTheResistanceIsToldApart() {
        SweepFit rough = fit(0.3);
        String sentence = rough.words().stream().filter(each -> each.startsWith("At the points fitted")).findFirst().orElseThrow();
        assertThat(sentence).contains("off by " + Quantity.format(rough.fit().worstRelativeErrorPercent(), "%", 2) + " of |Z|",
                "its resistance by " + Quantity.format(rough.fit().worstResistanceErrorPercent(), "%", 2) + " of Re Z");
        assertThat(rough.fit().worstResistanceErrorPercent()).isGreaterThan(10);
        assertThat(fit(0).fit().worstResistanceErrorPercent()).isLessThan(0.1);
    }
}
