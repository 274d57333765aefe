package org.stillrail.electrical.ripple;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.stillrail.electrical.bank.Banks;
import org.stillrail.electrical.bank.Branch;
import org.stillrail.electrical.capacitor.DatasheetModel;
import org.stillrail.electrical.capacitor.LossFigures;

/**
 * A constant-phase element has no state equations of finite order. Expected values: 2 097 152 harmonics summed in Python on
 * a grid of 8 388 608 points, with the inductive step added at the kinks.
 */
class RippleOfDatasheetModelsTest {

    private static final BuckCurrent BUCK = new BuckCurrent(12, 3.3, 4.7e-6, 500e3, 1);
    private static final Branch BULK =
            Banks.branch("bulk", 1, DatasheetModel.of(new LossFigures(2.2e-4, 0.14, 120, 0.2, 1e5), 1.5e-8));

    private static Branch ceramic(double inductanceH) {
        return Banks.branch("ceramic", 1, DatasheetModel.of(new LossFigures(1e-5, 0.05, 1e3, 0.004, 1e6), inductanceH));
    }

    @Test
    void constantPhaseElementAlone() {
        assertThat(Ripple.of(Banks.of(ceramic(0)), BUCK, 10).peakToPeakV()).isCloseTo(0.03126239335, withPercentage(0.005));
    }

    @Test
    void besideAnInductiveBranch() {
        assertThat(Ripple.of(Banks.of(BULK, ceramic(0)), BUCK, 10).peakToPeakV()).isCloseTo(0.03135677612, withPercentage(0.005));
    }

    @Test
    void bothWithInductance() {
        assertThat(Ripple.of(Banks.of(BULK, ceramic(6e-10)), BUCK, 10).peakToPeakV()).isCloseTo(0.02974118526, withPercentage(0.005));
    }
}
