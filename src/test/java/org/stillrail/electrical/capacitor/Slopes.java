package org.stillrail.electrical.capacitor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** Compares the slopes that a model states with central differences. */
final class Slopes {

    private Slopes() {
    }

    static void check(ImpedanceModel model, double hz) {
        double step = 1e-5 * hz;
        ImpedancePoint z = model.at(hz);
        ImpedancePoint above = model.at(hz + step);
        ImpedancePoint below = model.at(hz - step);
        double scale = (Math.abs(z.resistanceOhm()) + Math.abs(z.reactanceOhm())) / hz;
        assertThat(z.resistanceOhmPerHz())
                .isCloseTo((above.resistanceOhm() - below.resistanceOhm()) / (2 * step), within(1e-6 * scale));
        assertThat(z.reactanceOhmPerHz())
                .isCloseTo((above.reactanceOhm() - below.reactanceOhm()) / (2 * step), within(1e-6 * scale));
    }
}
