package org.stillrail.electrical.ripple;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.LossFigures;
import org.stillrail.verification.Check;
import org.stillrail.verification.Source;
import org.stillrail.verification.Topic;

/** A constant-phase element has no state equations of finite order. */
class RippleOfDatasheetModelsTest {

    private static final Source HARMONICS = Source.independent(
            "2 097 152 harmonics summed in Python on a grid of 8 388 608 points, with the inductive step added at the kinks");

    private static final BuckCurrent BUCK = new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 1);
    private static final Branch BULK =
            Banks.branch("bulk", 1, DatasheetModel.of(new LossFigures(2.2e-4, 0.14, 120, 0.2, 1e5), 1.5e-8));

    private static Branch ceramic(double inductanceH) {
        return Banks.branch("ceramic", 1, DatasheetModel.of(new LossFigures(1e-5, 0.05, 1e3, 0.004, 1e6), inductanceH));
    }

    @Test
    void constantPhaseElementAlone() {
        check("10 uF ceramic without inductance", 0.03126239335, ceramic(0));
    }

    @Test
    void besideAnInductiveBranch() {
        check("10 uF ceramic without inductance beside a 220 uF electrolytic", 0.03135677612, BULK, ceramic(0));
    }

    @Test
    void bothWithInductance() {
        check("10 uF ceramic with 0.6 nH beside a 220 uF electrolytic", 0.02974118526, BULK, ceramic(6e-10));
    }

    private static void check(String name, double expected, Branch... branches) {
        Check.that(Topic.RIPPLE, "Datasheet models under a buck, " + name + ": ripple, peak to peak")
                .source(HARMONICS).expected("V", expected).relative(5e-5).got(Ripple.of(Banks.of(branches), BUCK, 10).peakToPeakV());
    }
}
