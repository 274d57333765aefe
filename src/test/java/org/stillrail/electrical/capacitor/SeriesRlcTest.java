package org.stillrail.electrical.capacitor;

import org.junit.jupiter.api.Test;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

class SeriesRlcTest {

    /** CP-04: 1 nH, 10 uF. */
    @Test
    void aLosslessReactanceRisesAtLeastAsFosterSays() {
        SeriesRlc part = new SeriesRlc(10e-6, 0, 1e-9);
        double[] omega = {1e5, 1e7, 1e8};
        double[] x = new double[3];
        double[] slope = new double[3];
        for (int i = 0; i < 3; i++) {
            ImpedancePoint z = part.at(omega[i] / (2 * Math.PI));
            x[i] = z.reactanceOhm();
            slope[i] = z.reactanceOhmPerHz() / (2 * Math.PI);
        }
        Source foster = Source.fromMemory("R. M. Foster, Bell Syst. Tech. J. 3, 1924; derivative checked by central differences in Python");
        Check.that(Topic.MODELS, "Series 10 uF and 1 nH without loss at 1e5, 1e7 and 1e8 rad/s: X").source(foster)
                .expected("ohm", -0.9999, 0, 0.099).absolute(1e-12).got(x);
        Check.that(Topic.MODELS, "Series 10 uF and 1 nH without loss at 1e5, 1e7 and 1e8 rad/s: dX/dw, never below |X| / w").source(foster)
                .expected("H", 1.0001e-05, 2e-09, 1.01e-09).relative(1e-9).got(slope);
    }
}
